using Materia.Search;

namespace Materia.Tests.Search;

public class ConcurrencyTests
{
    [Fact]
    public async Task Search_FiftyAtOnce_AgreesWithOneAfterAnother()
    {
        string[] texts = ["shea", "shae buter", "oil", "rizinusöl", "61789-91-1", "cera alba", "kaol", "karité butyrospermum", "quinoa", "b"];
        var requests = Enumerable.Range(0, 50)
            .Select(i => new SearchRequest
            {
                Text = texts[i % texts.Length],
                Limit = 1 + (i / 10),
                Properties = i % 3 == 0 ? new Dictionary<PropertyGroup, DecimalRange> { [PropertyGroup.Melting] = new(20, 40) } : new Dictionary<PropertyGroup, DecimalRange>(),
            })
            .ToArray();
        var expected = requests.Select(Describe).ToArray();

        using var ready = new Barrier(requests.Length);
        var found = await Task.WhenAll(requests.Select(r => Task.Factory.StartNew(
            () =>
            {
                ready.SignalAndWait();
                return Describe(r);
            },
            TestContext.Current.CancellationToken, TaskCreationOptions.LongRunning, TaskScheduler.Default)));

        found.ShouldBe(expected);
        expected.Distinct().Count().ShouldBeGreaterThan(15, "otherwise agreement would say little");
    }

    private static string Describe(SearchRequest request) => System.Text.Json.JsonSerializer.Serialize(Sample.Index.Search(request));
}
