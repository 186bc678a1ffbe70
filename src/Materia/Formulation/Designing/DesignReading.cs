using Materia.Catalogue;
using Materia.Formulation.Normalising;
using Materia.Formulation.Optimising;
using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation.Designing;

/// <summary>A checked request.</summary>
internal sealed record DesignCase(
    Release Release, DesignRequest Request, IReadOnlyList<MaterialColumn> Columns, IReadOnlyList<AimedFigure> Targets, Region Region,
    int Fewest, int MostMaterials, int Limit, DateOnly AsOf, IReadOnlyDictionary<string, OwnMaterial> Own, DesignNeeds Needs, IReadOnlyList<string> Notes)
{
    /// <summary>What the product is for.</summary>
    public ProductUse? Use => Request.Use is { } use ? Release.FindUse(use) : null;
}

/// <summary>Checks a request and names every fault with its place.</summary>
internal static class DesignReading
{
    private const int UsualLimit = 3;
    private const int MostLimit = 10;
    private const int UsualMost = 8;
    private const int Greatest = 50;

    /// <summary>The case, or all faults.</summary>
    /// <param name="request">The request.</param>
    /// <param name="release">The release.</param>
    /// <param name="asOf">The day on which the product is placed on the market.</param>
    public static (DesignCase? Case, IReadOnlyList<FormulaFault> Faults) Read(
        DesignRequest request, Release release, DateOnly asOf)
    {
        var faults = new FaultList();
        List<string> notes = [];
        SearchRules.Check(request.Limit, MostLimit, request.TimeBudget, faults);
        var needs = DesignNeeds.Read(request, release, faults);
        var exclude = Exclusions.Read(request.Exclude, "/exclude", release, faults).And(needs.Scopes, needs.MaxComedogenic);
        HeadRules.Check(new Formula { Title = request.Title, Use = request.Use, Market = request.Market }, release, faults);
        if (request.Pantry.Count == 0)
        {
            faults.Add("/pantry", "The pantry is empty. Name what is at hand, such as { \"ingredient\": \"shea-butter\" }.");
        }

        var pantry = Pantry.Read(request.Pantry, "/pantry", release, faults, notes);
        var shut = pantry.Where(exclude.Holds).Select(c => c.Name).ToHashSet(StringComparer.Ordinal);
        var columns = pantry.Where(c => !shut.Contains(c.Name)).ToList();
        var targets = TargetReading.Read(request.Targets, needs.Targets, release, faults);
        if (!faults.Any && columns.Count == 0)
        {
            faults.Add(request.Exclude is null ? "/needs" : "/exclude", "The exclusions, those of the needs among them, leave nothing of the pantry. Exclude less, or put more into it.");
            return (null, faults.All);
        }

        var (fewest, most) = Count(request.Ingredients, columns.Count, faults);
        var region = ConstraintReading.Read(request.Constraints, columns, shut.Contains, faults);
        if (!faults.Any)
        {
            Reach(targets, request, columns, release, faults);
            if (region!.Low.Count(l => l > 0) is var asked && asked > most)
            {
                faults.Add("/ingredients/max", $"The constraints ask for {asked} materials, which is more than the most allowed. Raise it, or drop a least share.");
            }
        }

        if (faults.Any)
        {
            return (null, faults.All);
        }

        var own = request.Pantry.Select(p => p.Own).OfType<OwnMaterial>().Where(o => o.Name is not null).ToDictionary(o => o.Name!, StringComparer.Ordinal);
        return (new DesignCase(release, request, columns, targets, region!, fewest, most, request.Limit ?? UsualLimit, asOf, own, needs, notes), []);
    }

    private static (int Fewest, int Most) Count(IngredientCount? count, int columns, FaultList faults)
    {
        faults.Within("/ingredients/min", count?.Min, 1, Greatest, "The fewest materials");
        faults.Within("/ingredients/max", count?.Max, 1, Greatest, "The most materials");
        var fewest = count?.Min ?? 1;
        var most = count?.Max ?? Math.Max(UsualMost, fewest);
        if (fewest > most)
        {
            faults.Add("/ingredients/min", $"At least {fewest} and at most {most} contradict each other. Exchange the two.");
        }
        else if (fewest > columns && !faults.Any)
        {
            faults.Add("/ingredients/min", $"The pantry holds {columns} materials that may come in, fewer than are asked for. Put more there, or ask for fewer.");
        }

        return (fewest, most);
    }

    /// <summary>A figure that is a mean cannot lie outside what the materials have; a target beyond it is refused with what can be reached.</summary>
    private static void Reach(IReadOnlyList<AimedFigure> targets, DesignRequest request, List<MaterialColumn> columns, Release release, FaultList faults)
    {
        var model = new FigureModel(release, columns, [.. targets.Select(t => t.Figure)]);
        var alone = Enumerable.Range(0, columns.Count).Select(j => model.Alone(j)).ToList();
        for (var t = 0; t < targets.Count; t++)
        {
            var (target, known) = (targets[t], alone.Select(a => a[t]).Where(v => !double.IsNaN(v)).ToList());
            if (target.Figure.Property == BlendProperty.Cost)
            {
                for (var i = 0; i < request.Pantry.Count; i++)
                {
                    if (request.Pantry[i].PricePerKilogram is null)
                    {
                        faults.Add($"/pantry/{i}/pricePerKilogram", $"Cost is a target ({target.At}), so every material needs its price for a kilogram.");
                    }
                }
            }

            if (known.Count == 0)
            {
                faults.Add(target.At, $"Nothing in the pantry has a figure for {target.Figure.Name}. Put something there that has, or leave the target out.");
            }
            else if (model.IsMean(t) && (known.Min() > target.High + 1e-9 || known.Max() < target.Low - 1e-9))
            {
                faults.Add(target.At, FormattableString.Invariant($"{target.Figure.Name} cannot be reached: the materials of the pantry have {target.Figure.Printed(known.Min()):0.###} to {target.Figure.Printed(known.Max()):0.###} {target.Figure.Unit}, and a blend lies between. Change the target or the pantry."));
            }
        }
    }
}
