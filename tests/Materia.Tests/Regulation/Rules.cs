using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Regulation;

namespace Materia.Tests.Regulation;

/// <summary>Small made-up releases with rules; names of substances are real, figures mean nothing beyond the test.</summary>
internal static class Rules
{
    public static readonly ProductUse Lotion = Use("body-lotion", Exposure.LeaveOn, BodySite.Body, "5A");
    public static readonly ProductUse Soap = Use("soap-bar", Exposure.RinseOff, BodySite.Body, "9");

    public static Limit Limit(string id, decimal? max, params RegulatedMember[] members) => new()
    {
        Id = id,
        Substance = id,
        Authority = Authority.Eu,
        Kind = LimitKind.Restricted,
        Members = members,
        Scope = new ProductScope(),
        ScopeText = "all products",
        MaxPercent = max,
        Evidence = Evidence.Memory,
        Source = "recalled",
    };

    public static Allergen Allergen(string id, params RegulatedMember[] members) => new()
    {
        Id = id,
        DeclarationName = id,
        Members = members,
        LeaveOnThreshold = 0.001m,
        RinseOffThreshold = 0.01m,
        Evidence = Evidence.Memory,
        Source = "recalled",
    };

    public static RegulatedMember Cas(string name, string cas, decimal factor = 1) => new() { Name = name, Cas = cas, Factor = factor };

    public static Ingredient Oil(string id, params Constituent[] constituents) => Material(id, IngredientKind.EssentialOil) with { Constituents = constituents };

    public static Ingredient Material(string id, IngredientKind kind, string? cas = null) => new()
    {
        Id = id,
        Kind = kind,
        Names = [new IngredientName { Text = id, Kind = NameKind.Common, Evidence = Evidence.Memory, Source = "recalled" }],
        Numbers = cas is null ? [] : [new RegistryNumber { Registry = Registry.Cas, Number = cas, Evidence = Evidence.Memory, Source = "recalled" }],
    };

    public static Constituent Share(string substance, string cas, decimal? low, decimal? high, decimal? typical = null, string source = "recalled") =>
        new() { Substance = substance, Cas = cas, Low = low, Typical = typical, High = high, Evidence = Evidence.Memory, Source = source };

    /// <summary>A constituent as the analysis of the maker's own lot gives it.</summary>
    public static Constituent Analysed(string substance, string cas, decimal percent) => Share(substance, cas, null, null, percent, "own");

    public static Release Release(IReadOnlyList<Ingredient> ingredients, IReadOnlyList<Limit>? limits = null, IReadOnlyList<Allergen>? allergens = null) =>
        new(1, DateTimeOffset.UnixEpoch, "", new CatalogueContent
        {
            Ingredients = ingredients,
            Sources = [],
            FattyAcids = [],
            Uses = [Lotion, Soap],
            Limits = limits ?? [],
            Allergens = allergens ?? [],
        });

    public static RegulatedFormula Formula(Release release, ProductUse? use, params (string Id, decimal Percent)[] lines) => new(
        [.. lines.Select(l => new RegulatedLine(l.Id, l.Percent, release.FindIngredient(l.Id)!))],
        release, use, [Authority.Eu, Authority.Ifra, Authority.Opinion], new DateOnly(2026, 11, 25));

    private static ProductUse Use(string id, Exposure exposure, BodySite site, string category) => new()
    {
        Id = id,
        Name = id,
        Exposure = exposure,
        Site = site,
        IfraCategory = category,
        Description = id,
        Evidence = Evidence.Memory,
        Source = "recalled",
    };
}
