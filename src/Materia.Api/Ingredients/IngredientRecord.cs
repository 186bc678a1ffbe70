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

    /// <summary>What it is and what it is like to work with.</summary>
    public Description? Description { get; init; }

    /// <summary>The charge it carries in water, where it has to do with one.</summary>
    public ChargeStatement? Charge { get; init; }

    /// <summary>Measured or specified properties; where several stand side by side, <c>used</c> marks the one that computations take.</summary>
    public IReadOnlyList<Figure> Properties { get; init; } = [];

    /// <summary>Fatty-acid profiles: samples that add up to about 100 %, and ranges of standards.</summary>
    public IReadOnlyList<FattyAcidProfile> FattyAcidProfiles { get; init; } = [];

    /// <summary>Published compositions by triacylglycerol; where several stand side by side, <c>used</c> marks the one that computations take.</summary>
    public IReadOnlyList<TriacylglycerolProfile> TriacylglycerolProfiles { get; init; } = [];

    /// <summary>Named constituents in percent by mass.</summary>
    public IReadOnlyList<Constituent> Constituents { get; init; } = [];

    /// <summary>The parts of a mixture or a solution that is sold under one name; a label names them one by one.</summary>
    public IReadOnlyList<CompositePart> Parts { get; init; } = [];

    /// <summary>Usual shares by type of product: advice, never a limit of law.</summary>
    public IReadOnlyList<UsageLevel> UsageLevels { get; init; } = [];

    /// <summary>Which phase it goes into, how it is dispersed and kept.</summary>
    public IReadOnlyList<HandlingNote> Handling { get; init; } = [];

    /// <summary>The jobs in which it can stand in for others.</summary>
    public IReadOnlyList<SubstitutionMembership> SubstitutionGroups { get; init; } = [];

    /// <summary>What it was found to do to hair and skin; not a claim for a label.</summary>
    public IReadOnlyList<BodyNote> BodyNotes { get; init; } = [];

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
        Description = ingredient.Description,
        Charge = ingredient.Charge,
        Properties = ingredient.Properties,
        FattyAcidProfiles = ingredient.FattyAcidProfiles,
        TriacylglycerolProfiles = ingredient.TriacylglycerolProfiles,
        Constituents = ingredient.Constituents,
        Parts = ingredient.Parts,
        UsageLevels = ingredient.UsageLevels,
        Handling = ingredient.Handling,
        SubstitutionGroups = ingredient.SubstitutionGroups,
        BodyNotes = ingredient.BodyNotes,
        Comedogenic = [.. ingredient.Comedogenic.Select(ComedogenicGrade.Of)],
        Cautions = ingredient.Cautions,
        Sources = CitedSources.Of(ingredient, release),
        Release = release.Number,
    };
}
