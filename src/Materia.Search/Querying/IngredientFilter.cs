using System.Collections.Frozen;
using Materia.Catalogue;
using Materia.Search.Indexing;
using Materia.Search.Ranges;

namespace Materia.Search.Querying;

/// <summary>Everything but the text of one request, ready to try on ingredients.</summary>
internal sealed class IngredientFilter
{
    private readonly IngredientColumns columns;
    private readonly RangeMatch rangeMatch;
    private readonly FrozenSet<IngredientKind> kinds;
    private readonly FrozenSet<string> functions;
    private readonly FrozenSet<OriginKind> origins;
    private readonly FrozenSet<IonicCharge> charges;
    private readonly FrozenSet<string> groups;
    private readonly (PropertyGroup Group, DecimalRange Range)[] properties;
    private readonly (AskedAcid Acid, DecimalRange Range)[] acids;

    /// <summary>Prepares the filters of a request without faults.</summary>
    public IngredientFilter(SearchRequest request, Release release, IngredientColumns columns)
    {
        this.columns = columns;
        rangeMatch = request.RangeMatch;
        kinds = request.Kinds.ToFrozenSet();
        functions = request.Functions.ToFrozenSet(StringComparer.Ordinal);
        origins = request.Origins.ToFrozenSet();
        charges = request.Charges.ToFrozenSet();
        groups = request.Groups.ToFrozenSet(StringComparer.Ordinal);
        properties = [.. request.Properties.OrderBy(p => p.Key).Select(p => (p.Key, p.Value))];
        acids = [.. request.Acids
            .OrderBy(a => a.Key, StringComparer.Ordinal)
            .Select(a => (AskedAcid.Find(release, a.Key) ?? throw new ArgumentException($"Unknown acid {a.Key}.", nameof(request)), a.Value))];
    }

    /// <summary>True when the ingredient satisfies everything.</summary>
    public bool Accepts(int ingredient) =>
        (kinds.Count == 0 || kinds.Contains(columns.Kinds[ingredient]))
        && (origins.Count == 0 || (columns.Origins[ingredient] is { } origin && origins.Contains(origin)))
        && (functions.Count == 0 || Array.Exists(columns.Functions[ingredient], functions.Contains))
        && (charges.Count == 0 || (columns.Charges[ingredient] is { } charge && charges.Contains(charge)))
        && (groups.Count == 0 || Array.Exists(columns.Groups[ingredient], groups.Contains))
        && Array.TrueForAll(properties, p => Satisfies(columns.Figures(p.Group)[ingredient], p.Range))
        && Array.TrueForAll(acids, a => columns.Acids[ingredient].Find(a.Acid) is { } share && Satisfies(share.Low, share.High, a.Range));

    /// <summary>The figures by which an accepted ingredient satisfied the ranges.</summary>
    public IReadOnlyList<MatchedFigure> Figures(int ingredient)
    {
        var matched = new List<MatchedFigure>();
        foreach (var (group, range) in properties)
        {
            foreach (var f in columns.Figures(group)[ingredient])
            {
                if (Satisfies(f.Low, f.High, range))
                {
                    matched.Add(new MatchedFigure { Group = group, Property = f.Property, Low = f.Low, High = f.High, Unit = f.Unit, Temperature = f.Temperature, Method = f.Method });
                }
            }
        }

        return matched;
    }

    /// <summary>The shares by which an accepted ingredient satisfied the ranges.</summary>
    public IReadOnlyList<MatchedShare> Shares(int ingredient) => [.. acids.Select(a => columns.Acids[ingredient].Find(a.Acid)).OfType<MatchedShare>()];

    private bool Satisfies(IReadOnlyList<RangeFigure> figures, DecimalRange range)
    {
        // Overlap needs one figure that answers, within needs all.
        var all = rangeMatch == RangeMatch.Within;
        for (var i = 0; i < figures.Count; i++)
        {
            if (Satisfies(figures[i].Low, figures[i].High, range) != all)
            {
                return !all;
            }
        }

        return all && figures.Count > 0;
    }

    private bool Satisfies(decimal? low, decimal? high, DecimalRange range) =>
        rangeMatch == RangeMatch.Within ? range.Contains(low, high) : range.Overlaps(low, high);
}
