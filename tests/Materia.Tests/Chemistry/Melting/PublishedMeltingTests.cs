using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Printed figures on melting against the model, each row with its own tolerance. Comparisons are not held to any; they stand in docs/melting-accuracy.md.</summary>
public sealed class PublishedMeltingTests
{
    /// <summary>Checks that ask for words, not a figure, and the tests that hold them.</summary>
    private static readonly string[] InWords = ["M133", "M134", "M136", "M137", "M138"];

    public static IEnumerable<TheoryDataRow<string>> Pure() => Rows(r => PurePredictions.Find(r) is not null);

    public static IEnumerable<TheoryDataRow<string>> Eutectics() => Rows(r => r.Quantity.Contains("eutectic", StringComparison.Ordinal) && r.Printed is not null);

    public static IEnumerable<TheoryDataRow<string>> SolidContents() => Rows(r => r.Quantity == "SFC");

    public static IEnumerable<TheoryDataRow<string>> MeltingPoints() => Rows(r => PurePredictions.Find(r) is null && r.Unit == "degC" && !r.Quantity.Contains("eutectic", StringComparison.Ordinal));

    public static IEnumerable<TheoryDataRow<string>> Heats() => Rows(r => r.Quantity is "dHfus (bulk)" or "dHfus range");

    [Theory]
    [MemberData(nameof(Pure))]
    public void PureSpecies_PrintedFigure_IsWithinItsTolerance(string id) => Check(id, PurePredictions.Find);

    [Theory]
    [MemberData(nameof(Eutectics))]
    public void Eutectic_PrintedFigure_IsWithinItsTolerance(string id) => Check(id, EutecticPredictions.Find);

    [Theory]
    [MemberData(nameof(SolidContents))]
    public void SolidContent_SameSample_IsWithinItsTolerance(string id) => Check(id, r => FatPredictions.Solid(r)?.Percent);

    [Theory]
    [MemberData(nameof(MeltingPoints))]
    public void MeltingPoint_PrintedFigure_IsWithinItsTolerance(string id) => Check(id, FatPredictions.Melting);

    [Theory]
    [MemberData(nameof(Heats))]
    public void HeatOfFusion_NeatWax_IsWithinItsTolerance(string id) => Check(id, FatPredictions.Heat);

    [Fact]
    public void Rows_ChecksAndCalibration_AreAllHeldBySomeTest()
    {
        string[] held =
        [
            .. Pure().Concat(Eutectics()).Concat(SolidContents()).Concat(MeltingPoints()).Concat(Heats()).Concat(WaxGelTests.Gels()).Select(r => r.Data), .. InWords,
        ];
        held.ShouldBe(MeltingFiles.Rows.Where(r => r.Role != "comparison").Select(r => r.Id), ignoreOrder: true);
        MeltingFiles.Rows.ShouldAllBe(r => r.Role == "calibration" || r.Role == "check" || r.Role == "comparison");
        KnownMisses.ById.Keys.ShouldBeSubsetOf(held);
    }

    private static void Check(string id, Func<MeltingRow, double?> predict)
    {
        var row = MeltingFiles.Find(id);
        var value = predict(row).ShouldNotBeNull($"nothing stands for {row.System}");
        var printed = $"{row.Title}: {value:0.00} against {row.Text} ± {row.Tolerance}";
        if (KnownMisses.ById.TryGetValue(id, out var reason))
        {
            row.Allows(value).ShouldBeFalse($"{printed} is now met; take it off the list: {reason}");
        }
        else
        {
            row.Allows(value).ShouldBeTrue(printed);
        }
    }

    private static IEnumerable<TheoryDataRow<string>> Rows(Func<MeltingRow, bool> which) =>
        MeltingFiles.Rows.Where(r => r.Role != "comparison" && which(r)).Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.Title });
}
