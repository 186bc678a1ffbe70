namespace Materia.Catalogue;

/// <summary>A raw material as the catalogue knows it: what it is called, what it is, and every figure with its source.</summary>
public sealed record Ingredient
{
    /// <summary>The kebab-case common name, such as <c>shea-butter</c>. It never changes and is never used again for something else.</summary>
    public required string Id { get; init; }

    /// <summary>Ids that once named this ingredient; each answers with a redirect.</summary>
    public IReadOnlyList<string> FormerIds { get; init; } = [];

    /// <summary>What kind of material it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>What it is made from.</summary>
    public Origin? Origin { get; init; }

    /// <summary>All names; exactly one is <see cref="NameKind.Common"/> and comes first.</summary>
    public required IReadOnlyList<IngredientName> Names { get; init; }

    /// <summary>CAS and EC numbers; the first of each system is the one usual in trade.</summary>
    public IReadOnlyList<RegistryNumber> Numbers { get; init; } = [];

    /// <summary>What it does in a product, in the official inventory's terms.</summary>
    public IReadOnlyList<FunctionStatement> Functions { get; init; } = [];

    /// <summary>What it is and what it is like to work with.</summary>
    public Description? Description { get; init; }

    /// <summary>The charge it carries in water, where it has to do with one.</summary>
    public ChargeStatement? Charge { get; init; }

    /// <summary>Measured or specified properties. Several statements of one property may stand side by side; see <see cref="Figure.Used"/>.</summary>
    public IReadOnlyList<Figure> Properties { get; init; } = [];

    /// <summary>Fatty-acid profiles: samples that add up to about 100 %, and ranges of standards.</summary>
    public IReadOnlyList<FattyAcidProfile> FattyAcidProfiles { get; init; } = [];

    /// <summary>Published compositions by triacylglycerol; see <see cref="TriacylglycerolProfile.Used"/>.</summary>
    public IReadOnlyList<TriacylglycerolProfile> TriacylglycerolProfiles { get; init; } = [];

    /// <summary>Named constituents in percent by mass: of an essential oil, or the classes of a natural wax.</summary>
    public IReadOnlyList<Constituent> Constituents { get; init; } = [];

    /// <summary>The parts of a mixture or a solution that is sold under one name; empty for anything else.</summary>
    public IReadOnlyList<CompositePart> Parts { get; init; } = [];

    /// <summary>Usual shares by type of product; <see cref="Property.UsageLevel"/> holds the share over all types.</summary>
    public IReadOnlyList<UsageLevel> UsageLevels { get; init; } = [];

    /// <summary>Which phase it goes into, how it is dispersed and kept.</summary>
    public IReadOnlyList<HandlingNote> Handling { get; init; } = [];

    /// <summary>The jobs in which it can stand in for others.</summary>
    public IReadOnlyList<SubstitutionMembership> SubstitutionGroups { get; init; } = [];

    /// <summary>What it was found to do to hair and skin.</summary>
    public IReadOnlyList<BodyNote> BodyNotes { get; init; } = [];

    /// <summary>Grades of the rabbit-ear assay; never shown without <see cref="ComedogenicNote.Caveat"/>.</summary>
    public IReadOnlyList<ComedogenicNote> Comedogenic { get; init; } = [];

    /// <summary>What may hurt, spoil or stain.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>Every statement about it, in the order of the members; shares of profiles are statements too.</summary>
    public IEnumerable<Statement> Statements() =>
    [
        .. Single(Origin),
        .. Names,
        .. Numbers,
        .. Functions,
        .. Single(Description),
        .. Single(Charge),
        .. Properties,
        .. FattyAcidProfiles.SelectMany(p => p.Shares),
        .. TriacylglycerolProfiles.SelectMany(p => p.Shares),
        .. Constituents,
        .. Parts,
        .. UsageLevels,
        .. Handling,
        .. SubstitutionGroups,
        .. BodyNotes,
        .. Comedogenic,
        .. Cautions,
    ];

    /// <summary>The common name in English.</summary>
    public string CommonName() => Names.First(n => n.Kind == NameKind.Common).Text;

    /// <summary>The INCI name, or <see langword="null"/> where the catalogue has none.</summary>
    public string? InciName() => Names.FirstOrDefault(n => n.Kind == NameKind.Inci)?.Text;

    private static IEnumerable<Statement> Single(Statement? statement) => statement is null ? [] : [statement];
}
