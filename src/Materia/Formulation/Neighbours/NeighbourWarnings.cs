using System.Globalization;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Formulation.Scopes;
using Materia.Regulation.Lookup;

namespace Materia.Formulation.Neighbours;

/// <summary>What must be said before one ingredient takes another's place.</summary>
internal static class NeighbourWarnings
{
    /// <summary>Limits on each substance can be many; past this number the rest is counted.</summary>
    private const int MostLimits = 4;

    public static IReadOnlyList<NeighbourWarning> Of(Ingredient asked, Ingredient candidate, Release release) =>
    [
        .. Families(asked, candidate),
        .. Botanical(asked, candidate),
        .. candidate.Comedogenic.Select(Comedogenic),
        .. Limits(candidate, release),
        .. Usage(asked, candidate),
    ];

    private static IEnumerable<NeighbourWarning> Families(Ingredient asked, Ingredient candidate) =>
        (candidate.Origin?.AllergenFamilies ?? []).Select(family => new NeighbourWarning(
            NeighbourWarningKind.AllergenFamily,
            $"Belongs to the allergen family {KebabCase<AllergenFamily>.Word(family)}"
                + (asked.Origin?.AllergenFamilies.Contains(family) == true ? ", as the one asked for does." : "; ask who will use it."),
            candidate.Origin!.Source));

    private static IEnumerable<NeighbourWarning> Botanical(Ingredient asked, Ingredient candidate)
    {
        if (BotanicalFamilies.Of(candidate) is { } family && BotanicalFamilies.Of(asked) == family)
        {
            yield return new(
                NeighbourWarningKind.BotanicalFamily,
                $"Of the same plant family, {family}: no way out for somebody who reacts to {asked.CommonName()}. The placing in families is recalled.");
        }
    }

    private static NeighbourWarning Comedogenic(ComedogenicNote note) => new(
        NeighbourWarningKind.Comedogenic,
        string.Create(CultureInfo.InvariantCulture, $"Graded {note.Low}{(note.High > note.Low ? $" to {note.High}" : string.Empty)} of 5 as {note.Tested}. {ComedogenicNote.Caveat}"),
        note.Source);

    private static IEnumerable<NeighbourWarning> Limits(Ingredient candidate, Release release)
    {
        var found = LimitLookup.Of(release).Find(candidate, release, withConstituents: true)
            .OrderByDescending(m => m.Limit.Kind == LimitKind.Phototoxic)
            .ThenBy(m => m.As)
            .ToList();
        foreach (var match in found.Take(MostLimits))
        {
            yield return OfLimit(match);
        }

        if (found.Count > MostLimits)
        {
            yield return new(NeighbourWarningKind.Limit, string.Create(CultureInfo.InvariantCulture, $"{found.Count - MostLimits} more limits name it or what it holds; its record lists them."));
        }
    }

    private static NeighbourWarning OfLimit(LimitMatch match)
    {
        var limit = match.Limit;
        var most = limit.Kind == LimitKind.Prohibited ? "not allowed"
            : limit.MaxPercent is { } max ? string.Create(CultureInfo.InvariantCulture, $"{(limit.Below ? "below" : "at most")} {max} %")
            : "under conditions";
        var through = match.As == MatchedAs.Itself ? string.Empty : $", through its {KebabCase<MatchedAs>.Word(match.As)} {match.Name}";
        return new(
            limit.Kind == LimitKind.Phototoxic ? NeighbourWarningKind.Phototoxic : NeighbourWarningKind.Limit,
            $"{KebabCase<Authority>.Word(limit.Authority)}: {limit.Substance} {most} in {limit.ScopeText}{through}.",
            limit.Source);
    }

    private static IEnumerable<NeighbourWarning> Usage(Ingredient asked, Ingredient candidate)
    {
        if (Ceiling(asked) is { } most && Ceiling(candidate) is { } other && other.Central < most.Central)
        {
            yield return new(
                NeighbourWarningKind.UsageLevel,
                string.Create(CultureInfo.InvariantCulture, $"Usually no more than {other.Central} % of a product, where {asked.CommonName()} goes up to {most.Central} %."),
                other.Source);
        }
    }

    private static (decimal Central, string Source)? Ceiling(Ingredient ingredient) =>
        Chemistry.Materials.StoredFigures.Find(ingredient, Property.UsageLevel) is { High: { } high } figure ? (high, figure.Source) : null;
}
