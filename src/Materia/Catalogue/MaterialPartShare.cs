using System.Runtime.CompilerServices;

namespace Materia.Catalogue;

/// <summary>
/// One of the single materials that a material sold under one name consists of: the material itself where it has no parts, else each
/// part, parts of parts taken apart too. Labels, water and emulsifiers are counted on these.
/// </summary>
/// <param name="Name">The common name, or the INCI name of a part that the catalogue does not hold.</param>
/// <param name="InciName">The INCI name under which the mixture names it; absent for a material without one.</param>
/// <param name="Cas">The CAS number, where one is known.</param>
/// <param name="Ingredient">The record, where there is one.</param>
/// <param name="Low">The least share of the material [%].</param>
/// <param name="Typical">The share to compute with [%]: the usual one, else the middle of the range, else the one end that is known.</param>
/// <param name="High">The greatest share of the material [%]; all of it where nothing is stated.</param>
/// <param name="Stated">The greatest share that is stated [%]: as <paramref name="High"/>, and none where nothing is stated.</param>
/// <param name="Most">The share that it can have at most [%]: where no upper end is stated, all that the other parts leave.</param>
public sealed record MaterialPartShare(
    string Name, string? InciName, string? Cas, Ingredient? Ingredient, decimal Low, decimal Typical, decimal High, decimal Stated, decimal Most)
{
    // The seed check refuses loops; a chain this deep is none of a supplier's mixtures.
    private const int Deepest = 8;

    // An ingredient never changes, so its parts are worked out once for as long as its release lives.
    private static readonly ConditionalWeakTable<Ingredient, IReadOnlyList<MaterialPartShare>> Known = [];

    /// <summary>The CAS number of water.</summary>
    public const string WaterCas = "7732-18-5";

    /// <summary>Whether it is water, by its number or its name.</summary>
    public bool IsWater => Cas == WaterCas
        || string.Equals(InciName, "Aqua", StringComparison.OrdinalIgnoreCase) || string.Equals(InciName, "Water", StringComparison.OrdinalIgnoreCase);

    /// <summary>The single materials in <paramref name="ingredient"/>, in percent of it.</summary>
    public static IReadOnlyList<MaterialPartShare> Of(Ingredient ingredient, Release release)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(release);
        return Known.TryGetValue(ingredient, out var known) ? known : Known.GetValue(ingredient, i =>
        {
            var parts = new List<MaterialPartShare>();
            Add(Of(i), release, parts, 0);
            return parts;
        });
    }

    /// <summary>The material as one, whatever parts it has.</summary>
    public static MaterialPartShare Of(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return Whole(ingredient, ingredient.InciName(), new MaterialPartShare("", null, null, null, 100, 100, 100, 100, 100));
    }

    private static void Add(MaterialPartShare part, Release release, List<MaterialPartShare> parts, int depth)
    {
        if (part.Ingredient is not { Parts.Count: > 0 } mixture || depth == Deepest)
        {
            parts.Add(part);
            return;
        }

        foreach (var inner in mixture.Parts)
        {
            var typical = inner.Typical ?? (inner.Low + inner.High) / 2 ?? inner.Low ?? inner.High ?? 0;
            var room = Math.Max(0, 100 - mixture.Parts.Sum(p => ReferenceEquals(p, inner) ? 0 : p.Low ?? 0));
            var share = new MaterialPartShare(
                inner.InciName, inner.InciName, inner.Cas, null,
                part.Low * (inner.Low ?? inner.Typical ?? 0) / 100,
                part.Typical * typical / 100,
                part.High * (inner.High ?? inner.Typical ?? 100) / 100,
                part.Stated * (inner.High ?? inner.Typical ?? inner.Low ?? 0) / 100,
                part.Most * (inner.High ?? room) / 100);
            Add(
                inner.Ingredient is { } id && release.FindIngredient(id) is { } known ? Whole(known, inner.InciName, share) : share,
                release,
                parts,
                depth + 1);
        }
    }

    private static MaterialPartShare Whole(Ingredient ingredient, string? inciName, MaterialPartShare share) => share with
    {
        Name = ingredient.CommonName(),
        InciName = inciName,
        Cas = ingredient.Numbers.FirstOrDefault(n => n.Registry == Registry.Cas)?.Number,
        Ingredient = ingredient,
    };
}
