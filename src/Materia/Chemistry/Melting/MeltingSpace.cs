using System.Runtime.CompilerServices;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>
/// Every species that the ingredients of a release bring, numbered in the order of class and melting point, so that a blend
/// is a column of amounts. Built once for a release.
/// </summary>
public sealed class MeltingSpace
{
    private static readonly ConditionalWeakTable<Release, MeltingSpace> Known = [];
    // By reference: a maker's own material may be called as a catalogue ingredient is.
    private readonly Dictionary<Ingredient, Entry> entries;
    private readonly SpeciesBins bins;

    private MeltingSpace(Release release, IEnumerable<Ingredient> ingredients)
    {
        var described = ingredients.Select(i => (Ingredient: i, Species: SpeciesOfIngredient.Of(i, release))).ToList();
        Species = [.. described
            .SelectMany(d => d.Species.Species.Select(s => s.Species))
            .DistinctBy(s => (s.Class, s.Name))
            .OrderBy(s => s.Class)
            .ThenBy(s => s.MeltingPoint)
            .ThenBy(s => s.Name, StringComparer.Ordinal)];
        bins = new SpeciesBins(Species);
        var number = Species.Index().ToDictionary(p => (p.Item.Class, p.Item.Name), p => p.Index);
        entries = described.ToDictionary<(Ingredient Ingredient, IngredientSpecies Species), Ingredient, Entry>(
            d => d.Ingredient,
            d => new Entry(d.Species, [.. d.Species.Species.Select(s => (number[(s.Species.Class, s.Species.Name)], s.MolesPerGram))]),
            ReferenceEqualityComparer.Instance);
    }

    /// <summary>The species, in the order of class and melting point.</summary>
    public IReadOnlyList<PureSpecies> Species { get; }

    /// <summary>How many bins of species that melt alike there are.</summary>
    internal int BinCount => bins.Count;

    /// <summary>The space of a release, made at the first call.</summary>
    public static MeltingSpace Of(Release release) => Known.GetValue(release, static r => new MeltingSpace(r, r.Content.Ingredients));

    /// <summary>The space for a blend: the release's own, unless the blend brings a material that the release lacks.</summary>
    public static MeltingSpace For(Blend blend)
    {
        var strangers = blend.Components.Where(c => !ReferenceEquals(blend.Release.FindIngredient(c.Ingredient.Id), c.Ingredient)).ToList();
        return strangers.Count == 0
            ? Of(blend.Release)
            : new MeltingSpace(blend.Release, blend.Components.Select(c => c.Ingredient).Distinct<Ingredient>(ReferenceEqualityComparer.Instance));
    }

    /// <summary>What an ingredient of the space brings.</summary>
    public IngredientSpecies Describe(Ingredient ingredient) => entries[ingredient].Description;

    /// <summary>The space for these materials: the release's own, unless one of them is a stranger to it.</summary>
    internal static MeltingSpace For(IReadOnlyList<Ingredient> ingredients, Release release) =>
        ingredients.All(i => ReferenceEquals(release.FindIngredient(i.Id), i))
            ? Of(release)
            : new MeltingSpace(release, ingredients.Distinct<Ingredient>(ReferenceEqualityComparer.Instance));

    /// <summary>The species that an ingredient brings, by number [mol/g].</summary>
    internal IReadOnlyList<(int Index, double MolesPerGram)> AmountsOf(Ingredient ingredient) => entries[ingredient].Amounts;

    /// <summary>How much of a species an ingredient brings [mol/g].</summary>
    public double AmountOf(Ingredient ingredient, int index)
    {
        foreach (var (at, perGram) in entries[ingredient].Amounts)
        {
            if (at == index)
            {
                return perGram;
            }
        }

        return 0;
    }

    /// <summary>The amounts of all species in a blend.</summary>
    public BlendSpecies Compose(Blend blend)
    {
        var moles = new double[Species.Count];
        double fat = 0, filler = 0, unknown = 0;
        List<string> warnings = [], missing = [];
        foreach (var component in blend.Components)
        {
            var mass = component.MassFraction / blend.TotalMass;
            if (mass <= 0)
            {
                continue;
            }

            var entry = entries[component.Ingredient];
            warnings.AddRange(entry.Description.Warnings.Except(warnings));
            if (entry.Description.IsFiller)
            {
                filler += mass;
            }
            else if (entry.Description.Unknown is { } reason)
            {
                unknown += mass;
                missing.Add($"{component.Name}: {reason}");
            }
            else
            {
                fat += mass;
                foreach (var (index, perGram) in entry.Amounts)
                {
                    moles[index] += mass * perGram;
                }
            }
        }

        return new BlendSpecies(this, moles) { FatMass = fat, FillerMass = filler, UnknownMass = unknown, Warnings = warnings, Missing = missing };
    }

    /// <summary>The bin that a rare species goes into.</summary>
    internal int BinOf(int species, bool veryRare) => bins.Of(species, veryRare);

    /// <summary>The bins of a class.</summary>
    internal (int Start, int End) BinsOf(CrystalClass @class) => bins.Of(@class);

    private sealed record Entry(IngredientSpecies Description, (int Index, double MolesPerGram)[] Amounts);
}
