using Materia.Catalogue;

namespace Materia.Api.Ingredients;

/// <summary>The whole record of an ingredient: the catalogue's own members, and the sources that they cite.</summary>
public sealed record IngredientRecord
{
    /// <summary>The kebab-case common name, such as <c>shea-butter</c>; it never changes.</summary>
    public required string Id { get; init; }

    /// <summary>Ids that once named this ingredient; each answers with a redirect.</summary>
    public IReadOnlyList<string> FormerIds { get; init; } = [];

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What it is made from.</summary>
    public Origin? Origin { get; init; }

    /// <summary>All names; the English common name comes first.</summary>
    public required IReadOnlyList<IngredientName> Names { get; init; }

    /// <summary>CAS and EC numbers; the first of each system is the one usual in trade.</summary>
    public IReadOnlyList<RegistryNumber> Numbers { get; init; } = [];

    /// <summary>What it does in a product, in the official inventory's terms.</summary>
    public IReadOnlyList<FunctionStatement> Functions { get; init; } = [];

    /// <summary>Measured or specified properties; where several stand side by side, <c>used</c> marks the one that computations take.</summary>
    public IReadOnlyList<Figure> Properties { get; init; } = [];

    /// <summary>Fatty-acid profiles: samples that add up to about 100 %, and ranges of standards.</summary>
    public IReadOnlyList<FattyAcidProfile> FattyAcidProfiles { get; init; } = [];

    /// <summary>Published compositions by triacylglycerol; where several stand side by side, <c>used</c> marks the one that computations take.</summary>
    public IReadOnlyList<TriacylglycerolProfile> TriacylglycerolProfiles { get; init; } = [];

    /// <summary>Named constituents in percent by mass.</summary>
    public IReadOnlyList<Constituent> Constituents { get; init; } = [];

    /// <summary>Grades of the rabbit-ear assay, each with its caveat.</summary>
    public IReadOnlyList<ComedogenicGrade> Comedogenic { get; init; } = [];

    /// <summary>What may hurt, spoil or stain.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>Figures that were worked out from the record rather than stored in it; only what <c>include</c> asked for.</summary>
    public ComputedFigures? Computed { get; init; }

    /// <summary>Every source that the record cites, by key.</summary>
    public required IReadOnlyDictionary<string, Source> Sources { get; init; }

    /// <summary>The number of the release that the record was read in.</summary>
    public required int Release { get; init; }

    /// <summary>The record of <paramref name="ingredient"/> in <paramref name="release"/>.</summary>
    public static IngredientRecord Of(Ingredient ingredient, Release release) => new()
    {
        Id = ingredient.Id,
        FormerIds = ingredient.FormerIds,
        Kind = ingredient.Kind,
        Origin = ingredient.Origin,
        Names = ingredient.Names,
        Numbers = ingredient.Numbers,
        Functions = ingredient.Functions,
        Properties = ingredient.Properties,
        FattyAcidProfiles = ingredient.FattyAcidProfiles,
        TriacylglycerolProfiles = ingredient.TriacylglycerolProfiles,
        Constituents = ingredient.Constituents,
        Comedogenic = [.. ingredient.Comedogenic.Select(ComedogenicGrade.Of)],
        Cautions = ingredient.Cautions,
        Sources = CitedSources.Of(ingredient, release),
        Release = release.Number,
    };
}
