using System.Globalization;
using System.Text.RegularExpressions;
using Materia.Chemistry.Rules;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Preserving;

/// <summary>Undissociated shares and water-phase concentrations of the check rows, each with the row's own tolerance.</summary>
public partial class AcidCheckTests
{
    // The constants that the rows of these acids name as theirs.
    private static readonly Dictionary<string, double> Constants = new(StringComparer.Ordinal) { ["benzoic acid"] = 4.2, ["sorbic acid"] = 4.76, ["dehydroacetic acid"] = 5.27 };

    public static TheoryData<string> Fractions => Ids("undissociated_fraction");

    public static TheoryData<string> Concentrations => Ids("undissociated_concentration");

    public static TheoryData<string> WaterPhases => Ids("water_phase_concentration");

    [Theory]
    [MemberData(nameof(Fractions))]
    public void UndissociatedFraction_CheckRow_IsMet(string id)
    {
        var row = Row(id);
        var match = FractionForm().Match(row.System);

        row.Tolerance.Allows(row.Value, UndissociatedFraction.Of(Number(match.Groups[2]), Constants[match.Groups[1].Value])).ShouldBeTrue(row.Title);
    }

    [Theory]
    [MemberData(nameof(Concentrations))]
    public void UndissociatedFraction_PublishedConcentration_IsMet(string id)
    {
        var row = Row(id);
        var match = ConcentrationForm().Match(row.System);

        row.Tolerance.Allows(row.Value, Number(match.Groups[1]) * UndissociatedFraction.Of(Number(match.Groups[2]), Number(match.Groups[3]))).ShouldBeTrue(row.Title);
    }

    [Theory]
    [MemberData(nameof(WaterPhases))]
    public void WaterPhaseConcentration_CheckRow_IsMet(string id)
    {
        var row = Row(id);
        var match = WaterPhaseForm().Match(row.System);
        var cap = match.Groups[4].Success ? Number(match.Groups[4]) : double.PositiveInfinity;

        row.Tolerance.Allows(row.Value, WaterPhaseConcentration.Of(Number(match.Groups[1]), Number(match.Groups[2]), Number(match.Groups[3]), cap)).ShouldBeTrue(row.Title);
    }

    // ../shared/science/properties.md, (g) 3: 50 % glycerol gives 0.81 and 0.75 needs about 58 %; two decimals are printed.
    [Theory]
    [InlineData(50, 0.81)]
    [InlineData(58, 0.75)]
    public void NorrishWaterActivity_Glycerol_GivesThePrintedValue(double percent, double printed) =>
        NorrishWaterActivity.Of(100 - percent, [(percent, 92.09, -1.16)]).ShouldBe(printed, 0.005);

    [Fact]
    public void NorrishWaterActivity_PureWater_IsOne() => NorrishWaterActivity.Of(10, []).ShouldBe(1);

    private static TheoryData<string> Ids(string quantity) => [.. CheckFiles.Properties.Where(r => r.Quantity == quantity && !r.IsRejected).Select(r => r.Id)];

    private static CheckRow Row(string id) => CheckFiles.Properties.Single(r => r.Id == id);

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(.+) pH ([\d.]+)$")]
    private static partial Regex FractionForm();

    [GeneratedRegex(@"([\d.]+) % at pH ([\d.]+), pKa ([\d.]+)$")]
    private static partial Regex ConcentrationForm();

    [GeneratedRegex(@"([\d.]+) %, K ([\d.]+), oil:water ([\d.]+)(?:, cap ([\d.]+))?$")]
    private static partial Regex WaterPhaseForm();
}
