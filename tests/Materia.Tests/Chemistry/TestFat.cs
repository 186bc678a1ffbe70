using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry;

/// <summary>Makes ingredients for tests; their figures are the test's own.</summary>
internal static class TestFat
{
    public static Ingredient Of(string id, IngredientKind kind, params (string Acid, double Percent)[] acids) => new()
    {
        Id = id,
        Kind = kind,
        Names = [new() { Text = id, Kind = NameKind.Common, Language = "en", Evidence = Evidence.Published, Source = "test", Locator = "1" }],
        FattyAcidProfiles = acids.Length == 0 ? [] : [Sample(acids)],
    };

    /// <summary>The sample of a check composition as a triglyceride oil, its symbols brought to the table's.</summary>
    public static Ingredient OfCheck(string key) => Of(
        "check-" + key.Replace(' ', '-').Replace('_', '-'),
        IngredientKind.Oil,
        [.. CheckFiles.Compositions[key].Select(s => (s.Acid == "18:1OH" ? "18:1n-9-12OH" : s.Acid, s.Percent))]);

    public static FattyAcidProfile Sample(IEnumerable<(string Acid, double Percent)> acids, ProfilePart of = ProfilePart.Acids) => new()
    {
        Label = "test",
        Kind = ProfileKind.Sample,
        Of = of,
        Shares = [.. acids.Select(a => new FattyAcidShare { Acid = a.Acid, Typical = (decimal)a.Percent, Evidence = Evidence.Published, Source = "test", Locator = "1" })],
    };

    public static FattyAcidProfile Range(params (string Acid, decimal Low, decimal High)[] acids) => new()
    {
        Label = "test",
        Kind = ProfileKind.Range,
        Shares = [.. acids.Select(a => new FattyAcidShare { Acid = a.Acid, Low = a.Low, High = a.High, Evidence = Evidence.Published, Source = "test", Locator = "1" })],
    };

    public static Figure Figure(Property property, decimal? typical, decimal? low = null, decimal? high = null, decimal? temperature = null) => new()
    {
        Property = property,
        Typical = typical,
        Low = low,
        High = high,
        Unit = PropertyDefinition.All[property].Unit,
        At = temperature is null ? null : new Conditions { Temperature = temperature },
        Evidence = Evidence.Published,
        Source = "test",
        Locator = "1",
    };

    public static Blend Blend(params (Ingredient Ingredient, double Mass)[] parts) => BlendOf(false, parts);

    public static Blend Explained(params (Ingredient Ingredient, double Mass)[] parts) => BlendOf(true, parts);

    private static Blend BlendOf(bool explain, (Ingredient Ingredient, double Mass)[] parts) =>
        new([.. parts.Select(p => new BlendComponent(p.Ingredient.Id, p.Mass, p.Ingredient))], SeedCatalogue.Release, explain);
}
