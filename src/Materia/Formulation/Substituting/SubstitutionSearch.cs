using Materia.Chemistry.Materials;
using Materia.Formulation.Optimising;

namespace Materia.Formulation.Substituting;

/// <summary>
/// Searches whole formulas that do without. The missing materials are replaced one after the other, the largest first; all but the last by
/// the nearest replacement found.
/// </summary>
internal sealed class SubstitutionSearch
{
    /// <summary>How far over a swap ratio a share may go: the ratios are rules of thumb.</summary>
    private const double SwapAllowance = 1.25;

    private readonly SubstitutionCase request;
    private readonly Deadline deadline;
    private readonly decimal[] original;
    private readonly Dictionary<int, int>[] kinships;

    public SubstitutionSearch(SubstitutionCase request, Deadline deadline)
    {
        this.request = request;
        this.deadline = deadline;
        Lines = [.. request.Formula.Lines.Select(l => new MaterialColumn(l.Ingredient, l.Parts))];
        var present = Lines.Select(l => l.Name).ToHashSet(StringComparer.Ordinal);
        var missing = request.Without.Select(id => Lines.First(l => l.Name == id).Ingredient).ToList();
        var candidates = request.Candidates.Where(c => !present.Contains(c.Name) && missing.Exists(m => Kinship.Of(m, c.Ingredient) is not null));
        Columns = [.. Lines, .. candidates];
        kinships = [.. missing.Select(m => Enumerable.Range(Lines.Count, Columns.Count - Lines.Count)
            .Select(j => (Column: j, Kinship: Kinship.Of(m, Columns[j].Ingredient)))
            .Where(p => p.Kinship is not null)
            .ToDictionary(p => p.Column, p => p.Kinship!.Value))];
        original = [.. request.Formula.Lines.Select(l => l.Percent), .. new decimal[Columns.Count - Lines.Count]];
        var shares = original.Select(s => (double)s).ToArray();
        Model = new FigureModel(request.Release, Columns, ComparedFigures.Of(request.Formula.Blend(request.Release), Lines, shares[..Lines.Count]));
        Guard = new LimitGuard(request.Release, request.Formula.Use, request.Formula.Market, request.AsOf, Columns).Tolerating(original);
    }

    /// <summary>The formula's lines.</summary>
    public IReadOnlyList<MaterialColumn> Lines { get; }

    /// <summary>The lines, then what may come in.</summary>
    public IReadOnlyList<MaterialColumn> Columns { get; }

    /// <summary>The figures of blends of the columns.</summary>
    public FigureModel Model { get; }

    /// <summary>The limits.</summary>
    public LimitGuard Guard { get; }

    /// <summary>The share of a column in the original [%].</summary>
    public decimal OriginalShare(int column) => original[column];

    /// <summary>The formulas found, nearest first; empty when there is none.</summary>
    public IReadOnlyList<Draft> Run()
    {
        var current = original;
        for (var k = 0; k < request.Without.Count; k++)
        {
            var last = k == request.Without.Count - 1;
            var drafts = Replace(k, current, last ? request.Limit : 1, checkLimits: last);
            if (last || drafts.Count == 0)
            {
                return drafts;
            }

            current = drafts[0].Shares;
        }

        return [];
    }

    /// <summary>What is made least when the material at <paramref name="place"/> of the request's list is replaced.</summary>
    public Objective ObjectiveOf(int place, decimal[] current)
    {
        int[] missing = [.. Enumerable.Range(0, Lines.Count).Where(i => Lines[i].Name == request.Without[place])];
        var incoming = kinships[place].Where(p => current[p.Key] == 0).ToDictionary(p => p.Key, p => p.Value);
        var target = new Objective(Model, []).OutputsAt([.. original.Select(s => (double)s)]);
        var amount = missing.Sum(m => (double)current[m]);
        return new Objective(Model, SubstitutionGoals.Of(
            Model, target, Kept(missing[0], current), incoming, j => UsageCeilings.Of(Columns[j].Ingredient, request.Formula.Use), amount));
    }

    /// <summary>
    /// The greatest share of a column in place of the material at <paramref name="place"/> [%]. Where the trade's swap ratio is under 1, as
    /// of candelilla for beeswax, solid content does not show the whole strength of it, and no more than a quarter over the ratio comes in.
    /// </summary>
    public double MostOf(int place, int column, decimal[] current)
    {
        var missing = Enumerable.Range(0, Lines.Count).Where(i => Lines[i].Name == request.Without[place]).ToList();
        return Kinship.SwapRatio(Lines[missing[0]].Ingredient, Columns[column].Ingredient) is < 1 and var ratio
            ? SwapAllowance * ratio * missing.Sum(m => (double)current[m])
            : 100;
    }

    private IReadOnlyList<Draft> Replace(int place, decimal[] current, int limit, bool checkLimits)
    {
        int[] missing = [.. Enumerable.Range(0, Lines.Count).Where(i => Lines[i].Name == request.Without[place])];
        var incoming = kinships[place].Where(p => current[p.Key] == 0).ToDictionary(p => p.Key, p => p.Value);
        int[] kept = [.. Kept(missing[0], current)];
        var search = new ReplacementSearch(ObjectiveOf(place, current), current, missing, kept, [.. incoming.Keys.Order()], j => MostOf(place, j, current), deadline);
        return search.Run(limit, checkLimits ? Guard : null);
    }

    /// <summary>The lines that may move: fats move where a fat goes out; nothing moves for anything else.</summary>
    private IEnumerable<int> Kept(int missing, decimal[] current)
    {
        if (!Kinds.IsLipid(Lines[missing].Ingredient.Kind))
        {
            yield break;
        }

        for (var j = 0; j < Columns.Count; j++)
        {
            var free = j >= Lines.Count || (!request.Locked[j] && !request.Without.Contains(Lines[j].Name));
            if (free && current[j] > 0 && Kinds.IsLipid(Columns[j].Ingredient.Kind))
            {
                yield return j;
            }
        }
    }
}
