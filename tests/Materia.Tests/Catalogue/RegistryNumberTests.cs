using CsCheck;
using Materia.Catalogue;

namespace Materia.Tests.Catalogue;

/// <summary>Check digits, against numbers as the registries print them.</summary>
public sealed class RegistryNumberTests
{
    // CAS registry: water, castor oil, formaldehyde, linalool, coconut oil.
    [Theory]
    [InlineData("7732-18-5")]
    [InlineData("8001-79-4")]
    [InlineData("50-00-0")]
    [InlineData("78-70-6")]
    [InlineData("8001-31-8")]
    public void CasIsValid_RealNumber_IsTrue(string number) => CasNumber.IsValid(number).ShouldBeTrue();

    [Theory]
    [InlineData("7732-18-4")]
    [InlineData("7723-18-5")]
    [InlineData("7732185")]
    [InlineData("7732-185")]
    [InlineData("7732-18-5 ")]
    [InlineData("0732-18-5")]
    [InlineData("7-18-5")]
    [InlineData("77321234-18-5")]
    [InlineData("77a2-18-5")]
    [InlineData("٧٧٣٢-18-5")]
    [InlineData("")]
    [InlineData(null)]
    public void CasIsValid_WrongNumber_IsFalse(string? number) => CasNumber.IsValid(number).ShouldBeFalse();

    // EC inventory: castor oil, water, formaldehyde, coconut oil.
    [Theory]
    [InlineData("232-293-8")]
    [InlineData("231-791-2")]
    [InlineData("200-001-8")]
    [InlineData("232-282-8")]
    public void EcIsValid_RealNumber_IsTrue(string number) => EcNumber.IsValid(number).ShouldBeTrue();

    [Theory]
    [InlineData("232-293-7")]
    [InlineData("232-239-8")]
    [InlineData("2322938")]
    [InlineData("232-293-X")]
    [InlineData("232-2938")]
    [InlineData("")]
    [InlineData(null)]
    public void EcIsValid_WrongNumber_IsFalse(string? number) => EcNumber.IsValid(number).ShouldBeFalse();

    [Fact]
    public void CasIsValid_AnyDigitsBeforeTheCheckDigit_HoldsForExactlyOneDigit() =>
        Gen.Select(Gen.Int[10, 9_999_999], Gen.Int[0, 99]).Sample((head, middle) =>
            Enumerable.Range(0, 10).Count(digit => CasNumber.IsValid($"{head}-{middle:00}-{digit}")) == 1);

    [Fact]
    public void EcIsValid_AnyOneDigitChanged_IsFalse() =>
        Gen.Select(Gen.OneOf("232-293-8", "231-791-2", "200-001-8"), Gen.Int[0, 6], Gen.Int[1, 9]).Sample((number, at, step) =>
        {
            // Weights 1 to 6 are prime to 11, so that every slip of one digit shows.
            var place = at + (at >= 3 ? 1 : 0) + (at >= 6 ? 1 : 0);
            var digits = number.ToCharArray();
            digits[place] = (char)('0' + ((digits[place] - '0' + step) % 10));
            return !EcNumber.IsValid(new string(digits));
        });
}
