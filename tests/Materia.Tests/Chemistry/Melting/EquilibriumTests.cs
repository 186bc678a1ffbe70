using CsCheck;
using Materia.Chemistry.Melting;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The solver against the certain way, against closed forms, and against what must hold of any blend.</summary>
public sealed class EquilibriumTests
{
    private static readonly CrystalClass[] Crystallising = [.. Enum.GetValues<CrystalClass>().Where(c => c != CrystalClass.Liquid)];

    /// <summary>Blends of up to 14 species over all classes, some rare, with melting points from −40 to 90 °C.</summary>
    private static readonly Gen<List<Species>> Blends =
        Gen.Select(Gen.Int[0, Crystallising.Length], Gen.Double[-4, 0], Gen.Double[200, 900], Gen.Double[-40, 90], Gen.Double[25, 230])
            .Select((c, logMoles, molarMass, melting, enthalpy) => new Species(
                c == Crystallising.Length ? CrystalClass.Liquid : Crystallising[c], Math.Pow(10, logMoles), molarMass, melting + 273.15, 1000 * enthalpy))
            .List[1, 14];

    [Fact]
    public void SolidContentAt_GeneratedBlends_AgreesWithNestedBisection() =>
        Blends.Sample(
            species =>
            {
                var equilibrium = new PhaseEquilibrium(new SpeciesSystem(species, ClassTable.Of));
                for (var t = -10; t <= 80; t += 9)
                {
                    // A tenth of a point is the agreement asked for; both ways solve the same equations to far less.
                    equilibrium.SolidContentAt(t).ShouldBe(NestedBisection.SolidContentAt(species, ClassTable.Of, t), 0.1, $"{t} °C");
                }
            },
            iter: 300);

    [Fact]
    public void Curve_GeneratedBlends_NeverRisesOnHeating() =>
        Blends.Sample(
            species =>
            {
                var equilibrium = new PhaseEquilibrium(new SpeciesSystem(species, ClassTable.Of));
                var before = double.PositiveInfinity;
                for (var t = -10.0; t <= 80; t += 0.5)
                {
                    var solid = equilibrium.SolidContentAt(t);
                    solid.ShouldBeInRange(0, 100 + 1e-9);

                    // 1e-4 points is ten times the solver's own tolerance.
                    solid.ShouldBeLessThanOrEqualTo(before + 1e-4, $"{t} °C");
                    before = solid;
                }
            },
            iter: 300);

    [Fact]
    public void SolidContentAt_AnyOrderOfTemperatures_GivesTheSame() =>
        Gen.Select(Blends, Gen.Double[-10, 80].Array[2, 12]).Sample(
            (species, temperatures) =>
            {
                var system = new SpeciesSystem(species, ClassTable.Of);
                var warm = new PhaseEquilibrium(system);
                foreach (var t in temperatures)
                {
                    // Starts carried over must not change the answer beyond the solver's tolerance. Where a pure species melts the
                    // curve is upright, and any value between its ends a hair below and above is an answer.
                    double At(double celsius) => new PhaseEquilibrium(system).SolidContentAt(celsius);
                    warm.SolidContentAt(t).ShouldBeInRange(At(t + 0.001) - 1e-4, At(t - 0.001) + 1e-4);
                }
            },
            iter: 300);

    // The random blends came upon it: at its very melting point a species alone in its class made the next start infinite.
    [Fact]
    public void SolidContentAt_PureSpeciesAtItsMeltingPoint_GoesOnToOtherTemperatures()
    {
        var system = new SpeciesSystem([new Species(CrystalClass.Alcohol, 0.0012807320772854913, 305.45, 273.15, 136877.6009271324)], ClassTable.Of);
        var warm = new PhaseEquilibrium(system);
        foreach (var t in (double[])[0, 0, 13d / 63, 4, -1957e-16, 10d / 83, 5.4])
        {
            warm.SolidContentAt(t).ShouldBeInRange(new PhaseEquilibrium(system).SolidContentAt(t + 0.001) - 1e-4, new PhaseEquilibrium(system).SolidContentAt(t - 0.001) + 1e-4);
        }
    }

    [Theory]
    [InlineData(0.2, 40)]
    [InlineData(0.5, 50)]
    [InlineData(0.9, 60)]
    public void TemperatureAt_OneCrystallisingSpecies_IsOnTheIdealLiquidus(double fraction, double expectedAbove)
    {
        // Schröder-van Laar: ln x = (ΔH/R)(1/Tm − 1/T), exact for one species that crystallises alone.
        const double Melting = 342.45, Enthalpy = 61200;
        Species[] species = [new(CrystalClass.FreeAcid, fraction, 284.5, Melting, Enthalpy), new(CrystalClass.Liquid, 1 - fraction, 284.5, double.PositiveInfinity, 0)];
        var liquidus = (1 / ((1 / Melting) - (8.314462618 / Enthalpy * Math.Log(fraction)))) - 273.15;

        // The curve ends within 0.02 °C of its level, here a thousandth of a percent of solid.
        MeltingFats.Curve(species).TemperatureAt(0.001)!.Value.ShouldBe(liquidus, 0.05);
        liquidus.ShouldBeGreaterThan(expectedAbove);
    }

    [Fact]
    public void SolidContentAt_IdealSolidSolution_KeepsTheEquilibriumRatios()
    {
        // θ = 1: x_solid/x_liquid = K for each species, the textbook lens of two isomorphous substances.
        ClassParameters ideal = new(Polymorph.Beta, 0, 1, 1);
        Species[] species = [new(CrystalClass.WaxEster, 0.5, 500, 340, 80_000), new(CrystalClass.WaxEster, 0.5, 500, 320, 80_000)];
        var equilibrium = new PhaseEquilibrium(new SpeciesSystem(species, _ => ideal));
        equilibrium.SolidContentAt(56);
        var solid = equilibrium.Solid;
        double s = solid[0] + solid[1], l = 1 - s;
        for (var i = 0; i < 2; i++)
        {
            var k = Math.Exp(80_000 / 8.314462618 * ((1 / 329.15) - (1 / species[i].MeltingPoint)));

            // Six digits: the solver's tolerance is nine.
            (solid[i] / s / ((0.5 - solid[i]) / l) / k).ShouldBe(1, 1e-6);
        }
    }

    [Fact]
    public void Curve_AdaptiveTemperatures_StaysWithinItsStatedError() =>
        Blends.Sample(
            species =>
            {
                var system = new SpeciesSystem(species, ClassTable.Of);
                SolidContentCurve every = new(system), adaptive = new(system, every: false);
                for (var t = SolidContentCurve.From; t <= SolidContentCurve.To; t++)
                {
                    // Between solved temperatures the curve falls by half a point or a twentieth of itself at most, and so errs by
                    // less. Where a pure species melts at a whole degree the curve is upright, and any value between its ends a hair
                    // below and above is an answer.
                    var error = Math.Max(0.5, every.At(t) / 19);
                    double At(double celsius) => new PhaseEquilibrium(system).SolidContentAt(celsius);
                    adaptive.At(t).ShouldBeInRange(At(t + 0.001) - error, At(t - 0.001) + error, $"{t} °C");
                    adaptive.At(t).ShouldBeLessThanOrEqualTo(t > SolidContentCurve.From ? adaptive.At(t - 1) : 100.001);
                }

                var level = every.At(0) / 2;
                if (level > 0 && every.TemperatureAt(level) is { } expected)
                {
                    // Both are read off solved temperatures to within 0.02 °C; in a flat stretch any temperature of it is right.
                    new PhaseEquilibrium(system).SolidContentAt(adaptive.TemperatureAt(level)!.Value - 0.05).ShouldBeGreaterThanOrEqualTo(level - 1e-4);
                    new PhaseEquilibrium(system).SolidContentAt(expected + 0.05).ShouldBeLessThanOrEqualTo(level + 1e-4);
                }
            },
            iter: 100);

    [Theory]
    [InlineData(MeltingModel.ClassSolutions)]
    [InlineData(MeltingModel.IdealClasses)]
    [InlineData(MeltingModel.PureCrystals)]
    public void System_AnyModel_LeavesNothingOutThatCrystallises(MeltingModel model)
    {
        // Nine tenths of oil: what is left out as never solid must not show at the lowest temperature. A tenth of a point is the
        // agreement asked for; grouping the rare costs up to twice that.
        var blend = TestFat.Blend((SeedCatalogue.Ingredient("sunflower-oil"), 45), (SeedCatalogue.Ingredient("coconut-oil"), 55));
        blend = new(blend.Components, blend.Release, meltingModel: model);
        var amounts = MeltingSpace.For(blend).Compose(blend);
        var parameters = ClassTable.In(model);
        List<Species> all = [.. amounts.Space.Species.Index().Where(s => amounts.Moles[s.Index] > 0).Select(s => double.IsNaN(s.Item.MeltingPoint)
            ? new Species(CrystalClass.Liquid, amounts.Moles[s.Index], s.Item.MolarMass, double.PositiveInfinity, 0)
            : MeltingFats.Of(s.Item, amounts.Moles[s.Index]))];
        SpeciesSystem whole = new(all, c => parameters(c) with { TemperatureShift = 0 });

        new PhaseEquilibrium(amounts.System(parameters)).SolidContentAt(-10).ShouldBe(new PhaseEquilibrium(whole).SolidContentAt(-10), 0.2);
    }

    [Fact]
    public void SolidContentAt_OneSpecies_IsAllSolidBelowAndAllLiquidAbove()
    {
        var curve = MeltingFats.Curve([new(CrystalClass.Alcohol, 1, 242, 322.65, 57_000)]);
        // The least liquid that the solver looks for is e^-14 of the whole.
        curve.At(49).ShouldBe(100, 1e-3);
        curve.At(50).ShouldBe(0);
    }

    [Fact]
    public void SolidContentAt_OnlyLiquids_IsNothing()
    {
        var curve = MeltingFats.Curve([new(CrystalClass.Liquid, 1, 300, double.PositiveInfinity, 0)]);
        curve.At(-10).ShouldBe(0);
        curve.TemperatureAt(1).ShouldBeNull();
    }
}
