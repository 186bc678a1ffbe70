using Materia.Chemistry;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The least wax that gels an oil, as printed, against the texture that an evaluation gives.</summary>
public sealed class WaxGelTests
{
    private static readonly (string Name, string Id)[] Waxes =
        [("rice bran wax", "rice-bran-wax"), ("candelilla wax", "candelilla-wax"), ("carnauba wax", "carnauba-wax"), ("beeswax", "beeswax"), ("sunflower wax", "sunflower-wax")];

    public static IEnumerable<TheoryDataRow<string>> Gels() => MeltingFiles.Rows
        .Where(r => r.Role != "comparison" && r.Quantity.EndsWith("gelling concentration", StringComparison.Ordinal))
        .Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.Title });

    [Theory]
    [MemberData(nameof(Gels))]
    public void Texture_AboutTheLeastPrintedShare_TurnsToGel(string id)
    {
        // The row's own tolerance, and a little more so that its edges are not asked.
        var row = MeltingFiles.Find(id);
        var (share, tolerance) = (row.Printed!.Value.Low, row.Tolerance!.Value + 0.05);

        IsGel(row, share + tolerance).ShouldBeTrue();
        IsGel(row, share - tolerance).ShouldBeFalse();
    }

    private static bool IsGel(MeltingRow row, double percent)
    {
        var wax = SeedCatalogue.Ingredient(Waxes.Single(w => row.System.StartsWith(w.Name, StringComparison.Ordinal)).Id);
        var oil = SeedCatalogue.Ingredient(row.System.Contains("canola", StringComparison.Ordinal) ? "canola-oil" : "olive-oil");
        var melting = BlendMelting.Of(TestFat.Blend((wax, percent), (oil, 100 - percent)));
        return melting.Texture.Single(t => t.Temperature == 20).Note is not null;
    }
}
