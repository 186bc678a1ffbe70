using System.Text.Json;
using Materia.Api.Evaluations;

namespace Materia.Api.Tests.Evaluations;

/// <summary>How computed numbers are written.</summary>
public sealed class SignificantDigitsTests
{
    [Theory]
    [InlineData(0.913449, "0.9134")]
    [InlineData(185.4321, "185.4")]
    [InlineData(99.996, "100")]
    [InlineData(123456.7, "123500")]
    [InlineData(-12.34567, "-12.35")]
    [InlineData(0.000123456, "0.0001235")]
    [InlineData(20, "20")]
    [InlineData(0, "0")]
    [InlineData(double.NaN, "null")]
    [InlineData(double.PositiveInfinity, "null")]
    public void Write_Number_HasFourSignificantDigits(double value, string written) =>
        JsonSerializer.Serialize(value, EvaluationJson.Options).ShouldBe(written);

    [Fact]
    public void Write_Decimal_IsExact() => JsonSerializer.Serialize(56.30m, EvaluationJson.Options).ShouldBe("56.30");
}
