using System.Buffers;
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
        var described = ingredients.Select(i => (Ingredient: i, Species: Known.TryGetValue(release, out var known) && known.entries.TryGetValue(i, out var entry)
            ? entry.Description
            : SpeciesOfIngredient.Of(i, release))).ToList();
        Species = [.. described
            .SelectMany(d => d.Species.Species.Concat(d.Species.Softest ?? []).Concat(d.Species.Firmest ?? []).Select(s => s.Species))
            .DistinctBy(s => (s.Class, s.Name))
            .OrderBy(s => s.Class)
            .ThenBy(s => s.MeltingPoint)
            .ThenBy(s => s.Name, StringComparer.Ordinal)];
        bins = new SpeciesBins(Species);
        var number = Species.Index().ToDictionary(p => (p.Item.Class, p.Item.Name), p => p.Index);
        (int, double)[] Numbered(IReadOnlyList<(PureSpecies Species, double MolesPerGram)> amounts) =>
            [.. amounts.Select(s => (number[(s.Species.Class, s.Species.Name)], s.MolesPerGram))];
        entries = described.ToDictionary<(Ingredient Ingredient, IngredientSpecies Species), Ingredient, Entry>(
            d => d.Ingredient,
            d =>
            {
                var usual = Numbered(d.Species.Species);
                return new Entry(d.Species, usual, d.Species.Softest is { } soft ? Numbered(soft) : usual, d.Species.Firmest is { } firm ? Numbered(firm) : usual);
            },
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

    /// <summary>True for an ingredient that crystallises but whose records do not tell how far its composition ranges.</summary>
    public bool LacksSpread(Ingredient ingredient)
    {
        var entry = entries[ingredient];
        return ReferenceEquals(entry.Softest, entry.Amounts) && ReferenceEquals(entry.Firmest, entry.Amounts)
            && entry.Description.Species.Any(s => s.Species.Class != CrystalClass.Liquid);
    }

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

        return new BlendSpecies(this, moles) { Model = blend.MeltingModel, FatMass = fat, FillerMass = filler, UnknownMass = unknown, Warnings = warnings, Missing = missing };
    }

    /// <summary>
    /// The species of a blend with every ingredient at one end of its spread, laid out for the equilibrium; <see langword="null"/>
    /// when no ingredient of the blend has a spread to that side.
    /// </summary>
    internal SpeciesColumns? AtEnd(Blend blend, Firmness end)
    {
        if (!blend.Components.Any(c => c.MassFraction > 0 && !ReferenceEquals(entries[c.Ingredient].At(end), entries[c.Ingredient].Amounts)))
        {
            return null;
        }

        var moles = ArrayPool<double>.Shared.Rent(Species.Count);
        var used = moles.AsSpan(0, Species.Count);
        used.Clear();
        foreach (var component in blend.Components)
        {
            foreach (var (index, perGram) in entries[component.Ingredient].At(end))
            {
                used[index] += component.MassFraction / blend.TotalMass * perGram;
            }
        }

        var columns = SpeciesColumns.Of(this, used, blend.MeltingModel);
        ArrayPool<double>.Shared.Return(moles);
        return columns;
    }

    /// <summary>The bin that a rare species goes into.</summary>
    internal int BinOf(int species, bool veryRare) => bins.Of(species, veryRare);

    /// <summary>The bins of a class.</summary>
    internal (int Start, int End) BinsOf(CrystalClass @class) => bins.Of(@class);

    private sealed record Entry(
        IngredientSpecies Description, (int Index, double MolesPerGram)[] Amounts, (int Index, double MolesPerGram)[] Softest, (int Index, double MolesPerGram)[] Firmest)
    {
        public (int Index, double MolesPerGram)[] At(Firmness end) => end == Firmness.Softest ? Softest : end == Firmness.Firmest ? Firmest : Amounts;
    }
}
