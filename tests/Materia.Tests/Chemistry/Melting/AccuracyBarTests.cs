using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The accuracy asked for as a whole: reached, or known to be missed and held there, so that a change shows. docs/melting-accuracy.md says why.</summary>
public sealed class AccuracyBarTests
{
    private const double AskedOfTheBand = 0.8;

    [Fact]
    public void WholeFats_SameSampleNotCalibration_AreWithinFivePointsOnAverage()
    {
        // All nine rows are of palm oil and recalled: nothing else is printed with its own sample's composition.
        AccuracyFigures.Checks.Points.Count.ShouldBe(9);
        AccuracyFigures.Checks.MeanAbsoluteError.ShouldBeLessThanOrEqualTo(5);
    }

    [Fact]
    public void Band_SameSampleNotCalibration_HoldsFourFifthsOfPrintedValues() =>

        // The band's floor was set on the comparison rows, so these nine are no part of it.
        AccuracyFigures.Checks.InsideBand.ShouldBeGreaterThanOrEqualTo(AskedOfTheBand);

    [Fact]
    public void Band_AllCurves_HoldsFourFifthsOfPrintedValues() =>

        // Calibration is left out, and the index, which is another quantity.
        AccuracyFigures.AllCurves.InsideBand.ShouldBeGreaterThanOrEqualTo(AskedOfTheBand);

    [Fact]
    public void SlipPoints_Checks_AreInsideThePrintedRangeOrWithinTwoDegreesButOne()
    {
        var misses = MeltingFiles.Rows
            .Where(r => r.IsCheck && !r.System.EndsWith(" wax", StringComparison.Ordinal) && FatPredictions.Melting(r) is { } value && r.Distance(value) > 2)
            .Select(r => r.Id);

        // Palm olein by 4.2 °C, for the reason among the known misses.
        misses.ShouldBe(["M213"]);
    }

    [Fact]
    public void Eutectics_Checks_AreWithinThreeDegreesButFour()
    {
        var misses = MeltingFiles.Rows
            .Where(r => r.IsCheck && r.Unit == "degC" && EutecticPredictions.Find(r) is { } value && r.Distance(value) > 3)
            .Select(r => r.Id);

        // M113 by 3.8: print gives 57.85 and 52.3 °C for palmitic + stearic acid, and the model lies between. M120, M122 and
        // M130 by 3.2, 5.0 and 5.1: acids are taken as separate pure crystals; M113 and M120 are within their rows' own tolerance.
        misses.ShouldBe(["M113", "M120", "M122", "M130"]);
    }
}
