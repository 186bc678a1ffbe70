using Materia.Chemistry.Heating;
using Materia.Chemistry.Rules;

namespace Materia.Tests.Chemistry.Heating;

/// <summary>The equations of heat and settling against printed and hand-worked numbers.</summary>
public sealed class HeatRuleTests
{
    // stokes-soil-example: a grain of 0.05 mm, G 2.67, in water of 0.01 poise sinks at 0.2275 cm/s. It takes g as 981 cm/s2; ours is 0.03 % less, hence 0.1 %.
    [Fact]
    public void Velocity_SoilGrainInWater_IsThePrintedOne() =>
        StokesSettling.Velocity(50, 2.67, 1.0, 1.0).ShouldBe(0.002275, 0.002275 * 0.001);

    // Hand-worked: kaolin of 5 um and 2.6 g/mL in oil of 0.9 g/mL and 30 mPa.s: 1700 × 9.80665 × 25e-12 / (18 × 0.03) = 7.72e-7 m/s. Three digits.
    [Fact]
    public void Velocity_ClayInOil_IsTheHandWorkedOne() =>
        StokesSettling.Velocity(5, 2.6, 0.9, 30).ShouldBe(7.72e-7, 0.005e-7);

    [Fact]
    public void Velocity_LighterGrain_Rises() => StokesSettling.Velocity(10, 0.8, 0.9, 30).ShouldBeLessThan(0);

    // Hand-worked, as in the science note: 250 g of fat at 2.0 J/(g.K), 0.019 m2 at 6 W/(m2.K), from 70 to 30 °C in air of 5 °C:
    // 500 / 0.114 × ln(65/25) = 4386 s × 0.9555 = 4191 s = 69.8 min; the note prints 70.
    [Fact]
    public void Time_FatInAFridge_IsTheHandWorkedOne() =>
        (NewtonCooling.Time(500, 0.019 * 6, 70, 30, 5) / 60).ShouldBe(69.8, 0.1);

    [Theory]
    [InlineData(70, 30, 35)]
    [InlineData(20, 30, 25)]
    [InlineData(70, 30, 30)]
    public void Time_SurroundingsInTheWay_NeverEnds(double from, double to, double surroundings) =>
        NewtonCooling.Time(500, 0.1, from, to, surroundings).ShouldBe(double.PositiveInfinity);

    [Fact]
    public void Time_Nowhere_IsNone() => NewtonCooling.Time(500, 0.1, 20, 20, 20).ShouldBe(0);

    // The science note: 250 g (about 2.75e-4 m3) with 0.019 m2, surface coefficient 9, k 0.17: 9 × 0.01447 / 0.17 = 0.77, printed as 0.7.
    [Fact]
    public void Biot_QuarterKilo_IsAboutThePrintedOne() => NewtonCooling.Biot(9, 2.75e-4, 0.019, 0.17).ShouldBe(0.77, 0.01);

    // Choi and Okos at 50 °C: 1.9842 + 0.0737 − 0.0120 = 2.046; 1.5488 + 0.0981 − 0.0148 = 1.632; 4.1762 − 0.0045 + 0.0137 = 4.185. The table rounds to 0.01.
    [Theory]
    [InlineData(2.046, "fat")]
    [InlineData(1.632, "carbohydrate")]
    [InlineData(4.185, "water")]
    public void SpecificHeats_Printed_AreThoseOfThePolynomials(double printed, string row) =>
        (row == "fat" ? SpecificHeats.Fat : row == "water" ? SpecificHeats.Water : SpecificHeats.Carbohydrate).Value.ShouldBe(printed, 0.0051);

    // A second source: cottonseed oil 1.930 + 0.00125 t (Hirschberg, quoted in a data file): 1.98 at 40 °C, inside the range given for fats.
    [Fact]
    public void SpecificHeat_CottonseedByAnotherSource_LiesInTheRange()
    {
        SpecificHeats.Fat.Low.ShouldBeLessThan(1.98);
        SpecificHeats.Fat.High.ShouldBeGreaterThan(1.98);
    }

    // Hand-worked geometry: a cylinder as high as it is wide, 785.4 mL: d = h = 0.1 m; side 0.031416, bottom and top 0.007854 m2 each.
    [Fact]
    public void FilledVessel_Cylinder_HasItsSurface()
    {
        var filled = new FilledVessel(new Vessel("test", "test", 1, 2, 0.5, 0), 785.398e-6);

        filled.Width.ShouldBe(0.1, 1e-6);
        filled.Area.ShouldBe(0.031416 + 0.015708, 1e-5);
        filled.WallCapacity.ShouldBe(1000 * 0.03927 * 2 * 0.5, 0.01);
    }

    [Fact]
    public void Tables_EveryFigure_HasASourceInTheSeedDataAndAnOrderedRange()
    {
        foreach (var figure in (SourcedFigure[])[.. SpecificHeats.All, .. Surroundings.All, .. WhippingRange.All, .. GrainSizes.All])
        {
            SeedCatalogue.Release.FindSource(figure.Source).ShouldNotBeNull(figure.What);
            figure.Low.ShouldBeLessThanOrEqualTo(figure.Value, figure.What);
            figure.High.ShouldBeGreaterThanOrEqualTo(figure.Value, figure.What);
            if (figure.Evidence == Materia.Catalogue.Evidence.Published)
            {
                figure.Locator.ShouldNotBeNullOrWhiteSpace(figure.What);
            }
        }
    }
}
