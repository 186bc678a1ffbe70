using Materia.Catalogue;

namespace Materia.Tests.Search;

/// <summary>Writes ingredients in few words. Grade and source are the same everywhere, since search doesn't look at them.</summary>
internal static class SampleIngredient
{
    private const string Source = "recalled";

    public static Ingredient New(string id, IngredientKind kind, OriginKind? from, string common, string? inci, params IEnumerable<IngredientName> others) => new()
    {
        Id = id,
        Kind = kind,
        Origin = from is { } origin ? new Origin { From = origin, Evidence = Evidence.Memory, Source = Source } : null,
        Names = [Name(NameKind.Common, common, "en"), .. inci is null ? [] : new[] { Name(NameKind.Inci, inci) }, .. others],
    };

    public static IngredientName Name(NameKind kind, string text, string? language = null) =>
        new() { Kind = kind, Text = text, Language = language, Evidence = Evidence.Memory, Source = Source };

    public static IngredientName Synonym(string language, string text) => Name(NameKind.Synonym, text, language);

    public static Ingredient Cas(this Ingredient ingredient, string number) => ingredient.Number(Registry.Cas, number);

    public static Ingredient Ec(this Ingredient ingredient, string number) => ingredient.Number(Registry.Ec, number);

    public static Ingredient Does(this Ingredient ingredient, params IEnumerable<string> functions) =>
        ingredient with { Functions = [.. functions.Select(f => new FunctionStatement { Function = f, Evidence = Evidence.Memory, Source = Source })] };

    public static Ingredient Figure(this Ingredient ingredient, Property property, decimal? low, decimal? high, decimal? typical = null, Conditions? at = null, bool used = false) =>
        ingredient with
        {
            Properties =
            [
                .. ingredient.Properties,
                new Figure
                {
                    Property = property, Low = low, Typical = typical, High = high, At = at, Used = used,
                    Unit = PropertyDefinition.All[property].Unit, Evidence = Evidence.Memory, Source = Source,
                },
            ],
        };

    public static Ingredient Graded(this Ingredient ingredient, int low, int high) => ingredient with
    {
        Comedogenic = [.. ingredient.Comedogenic, new ComedogenicNote { Low = low, High = high, Tested = ingredient.Id, Evidence = Evidence.Memory, Source = Source }],
    };

    public static Ingredient Charged(this Ingredient ingredient, IonicCharge charge) =>
        ingredient with { Charge = new ChargeStatement { Charge = charge, Evidence = Evidence.Memory, Source = Source } };

    public static Ingredient Of(this Ingredient ingredient, AllergenFamily family) => ingredient with { Origin = ingredient.Origin! with { AllergenFamilies = [family] } };

    public static Ingredient Holding(this Ingredient ingredient, params IEnumerable<string> parts) => ingredient with
    {
        Parts = [.. parts.Select(id => new CompositePart { InciName = id, Ingredient = id, Evidence = Evidence.Memory, Source = Source })],
    };

    public static Ingredient In(this Ingredient ingredient, params IEnumerable<string> groups) => ingredient with
    {
        SubstitutionGroups = [.. groups.Select(g => new SubstitutionMembership { Group = g, Text = "A member.", Evidence = Evidence.Memory, Source = Source })],
    };

    public static Ingredient Profile(this Ingredient ingredient, bool used, params IEnumerable<(string Acid, decimal? Low, decimal? Typical, decimal? High)> shares) =>
        ingredient with
        {
            FattyAcidProfiles =
            [
                .. ingredient.FattyAcidProfiles,
                new FattyAcidProfile
                {
                    Label = "a sample", Kind = ProfileKind.Sample, Used = used,
                    Shares = [.. shares.Select(s => new FattyAcidShare { Acid = s.Acid, Low = s.Low, Typical = s.Typical, High = s.High, Evidence = Evidence.Memory, Source = Source })],
                },
            ],
        };

    public static Ingredient Acids(this Ingredient ingredient, params IEnumerable<(string Acid, decimal Typical)> shares) =>
        ingredient.Profile(false, shares.Select(s => (s.Acid, (decimal?)null, (decimal?)s.Typical, (decimal?)null)));

    private static Ingredient Number(this Ingredient ingredient, Registry registry, string number) => ingredient with
    {
        Numbers = [.. ingredient.Numbers, new RegistryNumber { Registry = registry, Number = number, Evidence = Evidence.Memory, Source = Source }],
    };
}
