using System.Globalization;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>Shows a melting curve at one temperature so that it can be followed by hand: the species, their pure properties and the equilibrium.</summary>
internal static class MeltingSteps
{
    private const int MostSpecies = 12;

    public static IReadOnlyList<ExplainedStep> Of(Blend blend, BlendSpecies species, SolidContentCurve curve)
    {
        List<ExplainedStep> steps =
        [
            .. blend.Components.DistinctBy(c => c.Name).Select(c => Basis(species, c)),
            Species(species),
            Pure(species),
            Equilibrium(blend, species, curve),
        ];
        return steps;
    }

    private static ExplainedStep Basis(BlendSpecies species, BlendComponent component)
    {
        var described = species.Space.Describe(component.Ingredient);
        return new()
        {
            What = $"Species of {component.Name}",
            Equation = "fatty acids to moles; sn-2 by rule, outer positions at random: z(a,b,c) = o_a·y_b·o_c, o = (3x − y)/2",
            Arithmetic = described.Unknown ?? described.Basis,
            Inputs = described.Unknown is null && !described.IsFiller ? SpeciesInputs.Of(component) : [],
        };
    }

    private static ExplainedStep Species(BlendSpecies species)
    {
        var total = species.Moles.Sum();
        return new()
        {
            What = "Most abundant species of the blend",
            Equation = "z = moles of the species / moles of all species of the fat phase",
            Arithmetic = string.Join("; ", Top(species).Select(i => $"{species.Space.Species[i].Name} {Percent(species.Moles[i] / total)} mol ({Standing(species.Space.Species[i])})")),
        };
    }

    private static string Standing(PureSpecies pure)
    {
        var word = KebabCase<CrystalClass>.Word(pure.Class);
        return pure.Class == CrystalClass.Liquid ? word
            : pure.MeltingSeen == pure.EnthalpySeen ? $"{word}; melting and heat {pure.MeltingSeen}"
            : $"{word}; melting {pure.MeltingSeen}; heat {pure.EnthalpySeen}";
    }

    private static ExplainedStep Pure(BlendSpecies species)
    {
        PureSpecies[] crystallising = [.. Top(species).Select(i => species.Space.Species[i]).Where(s => s.Class != CrystalClass.Liquid)];
        return new()
        {
            What = "Pure melting points and enthalpies of fusion",
            Equation = "Tm = 401.15 K·(1 + A/n − A·B/n²) unless measured; class shift added",
            Arithmetic = string.Join("; ", crystallising.Select(s => string.Create(
                CultureInfo.InvariantCulture,
                $"{s.Name} ({KebabCase<CrystalClass>.Word(s.Class)}) {s.MeltingPoint:0.0} {ClassTable.Of(s.Class).TemperatureShift:+0.0;-0.0;+0.0} Cel [{s.MeltingSeen}], {s.EnthalpyOfFusion:0} kJ/mol [{s.EnthalpySeen}]"))),
            Inputs =
            [
                .. crystallising.SelectMany(s => (UsedFigure[])
                [
                    new(s.Name, "melting point", s.MeltingPoint, Units.Celsius, s.MeltingSeen.Grade, s.MeltingSeen.Source, null),
                    new(s.Name, "enthalpy of fusion", s.EnthalpyOfFusion, "kJ/mol", s.EnthalpySeen.Grade, s.EnthalpySeen.Source, null),
                ]),
            ],
        };
    }

    private static ExplainedStep Equilibrium(Blend blend, BlendSpecies species, SolidContentCurve curve)
    {
        var solids = new Dictionary<int, double>();
        species.ForEachSolid(curve.Equilibrium, blend.ExplainAt, (i, _, share) => solids[i] = share);
        return new()
        {
            What = string.Create(CultureInfo.InvariantCulture, $"Equilibrium at {blend.ExplainAt} Cel"),
            Equation = "ln K = (ΔH/R)(1/T − 1/Tm); " + (blend.MeltingModel == MeltingModel.PureCrystals
                ? "K·x_liquid = 1 for each species that crystallises"
                : "x_solid = (K·x_liquid)^(1/θ), Σ x_solid = 1 in each class that crystallises"),
            Arithmetic = string.Join("; ", Top(species).Where(solids.ContainsKey).Select(i => $"{species.Space.Species[i].Name} {Percent(solids[i])} solid"))
                + string.Create(CultureInfo.InvariantCulture, $"; in all {curve.At(blend.ExplainAt):0.0} % solid by mass"),
        };
    }

    private static IEnumerable<int> Top(BlendSpecies species) =>
        Enumerable.Range(0, species.Moles.Count).Where(i => species.Moles[i] > 0).OrderByDescending(i => species.Moles[i]).Take(MostSpecies);

    private static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
