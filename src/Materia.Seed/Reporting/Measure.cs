using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>Something that is stated of ingredients and counted in the report: a property, a composition, or another member of the record.</summary>
/// <param name="Name">The property in kebab case, or the member.</param>
/// <param name="Statements">The statements of it that an ingredient has.</param>
internal sealed record Measure(string Name, Func<Ingredient, IEnumerable<Statement>> Statements)
{
    private static readonly HashSet<Property> MeltingProperties =
        [Property.MeltingRange, Property.MeltingPoint, Property.SlipMeltingPoint, Property.ClearPoint, Property.DropPoint];

    /// <summary>Shares of fatty acids and alcohols, of samples and of standards.</summary>
    public static Measure FattyAcidProfile { get; } = new("fatty-acid-profile", i => i.FattyAcidProfiles.SelectMany(p => p.Shares));

    /// <summary>Shares of triacylglycerols.</summary>
    public static Measure TriacylglycerolProfile { get; } = new("triacylglycerol-profile", i => i.TriacylglycerolProfiles.SelectMany(p => p.Shares));

    /// <summary>Shares of constituents.</summary>
    public static Measure Constituents { get; } = new("constituents", i => i.Constituents);

    /// <summary>Any of the properties that say when it melts.</summary>
    public static Measure Melting { get; } = new("melting", i => i.Properties.Where(f => MeltingProperties.Contains(f.Property)));

    /// <summary>Usual shares, over all products and by type of product.</summary>
    public static Measure Usage { get; } = new("usage", i => i.Properties.Where(f => f.Property == Property.UsageLevel).Concat<Statement>(i.UsageLevels));

    /// <summary>Parts of mixtures.</summary>
    public static Measure Parts { get; } = new("parts", i => i.Parts);

    /// <summary>The charge in water.</summary>
    public static Measure Charge { get; } = new("charge", i => i.Charge is { } charge ? [charge] : []);

    /// <summary>The description.</summary>
    public static Measure Description { get; } = new("description", i => i.Description is { } description ? [description] : []);

    /// <summary>The origin.</summary>
    public static Measure Origin { get; } = new("origin", i => i.Origin is { } origin ? [origin] : []);

    /// <summary>The name on a label: the INCI name, or for a mixture its parts.</summary>
    public static Measure LabelName { get; } = new("label-name", i => i.Names.Where(n => n.Kind == NameKind.Inci).Concat<Statement>(i.Parts));

    /// <summary>Functions.</summary>
    public static Measure Functions { get; } = new("functions", i => i.Functions);

    /// <summary>Notes on handling.</summary>
    public static Measure Handling { get; } = new("handling", i => i.Handling);

    /// <summary>The figures of one property.</summary>
    public static Measure Of(Property property) => new(KebabCase<Property>.Word(property), i => i.Properties.Where(f => f.Property == property));

    /// <summary>
    /// The figures of an ingredient, each with the name of its measure: properties, profile shares, constituents and triacylglycerol
    /// shares. Usage levels are advice and are counted apart; a constituent without a share is no figure.
    /// </summary>
    public static IEnumerable<(string Name, Statement Figure)> Figures(Ingredient ingredient) =>
        ingredient.Properties.Where(f => f.Property != Property.UsageLevel).Select(f => (KebabCase<Property>.Word(f.Property), (Statement)f))
            .Concat(FattyAcidProfile.Statements(ingredient).Select(s => (FattyAcidProfile.Name, s)))
            .Concat(TriacylglycerolProfile.Statements(ingredient).Select(s => (TriacylglycerolProfile.Name, s)))
            .Concat(ingredient.Constituents.Where(c => (c.Low ?? c.Typical ?? c.High) is not null).Select(c => (Constituents.Name, (Statement)c)));
}
