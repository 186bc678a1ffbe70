using System.Globalization;
using Materia.Catalogue;

namespace Materia.Formulation.Optimising;

/// <summary>One figure of a blend: a property, with the temperature or the fatty acid that it is about.</summary>
/// <param name="Property">The property.</param>
/// <param name="Temperature">The temperature [Cel]; given for solid content, viscosity and density, and for nothing else.</param>
/// <param name="Acid">The symbol of the acid or chain; given for the share of a fatty acid, and for nothing else.</param>
public sealed record BlendFigure(BlendProperty Property, double? Temperature = null, string? Acid = null)
{
    /// <summary>The UCUM code of its unit; prices have a currency, which is the maker's.</summary>
    public string Unit => Property switch
    {
        BlendProperty.ClearPoint => Units.Celsius,
        BlendProperty.Viscosity => Units.MillipascalSecond,
        BlendProperty.IodineValue or BlendProperty.OilAbsorption or BlendProperty.WaterAbsorption => Units.GramPerHundredGram,
        BlendProperty.SaponificationValue => Units.MilligramPerGram,
        BlendProperty.Density => Units.GramPerMillilitre,
        BlendProperty.CationExchangeCapacity => Units.CentimolePerKilogram,
        BlendProperty.SwellingVolume => Units.Millilitre,
        BlendProperty.Oxidisability or BlendProperty.RequiredHlb or BlendProperty.Hlb => Units.One,
        BlendProperty.Cost => "1/kg",
        _ => Units.Percent,
    };

    /// <summary>
    /// The difference that a user is likely to notice, on the scale of <see cref="Felt"/>. Common practice where the figure is felt, and
    /// for figures of composition about the spread between lots. A distance of 1 is one such step.
    /// </summary>
    public double Step => Property switch
    {
        BlendProperty.SolidContent or BlendProperty.FattyAcid or BlendProperty.Saturated or BlendProperty.Monounsaturated or BlendProperty.Polyunsaturated => 5,
        BlendProperty.ClearPoint => 2,
        BlendProperty.Viscosity => Math.Log(1.2),
        BlendProperty.IodineValue or BlendProperty.SaponificationValue or BlendProperty.OilAbsorption or BlendProperty.CationExchangeCapacity => 10,
        BlendProperty.Density => 0.02,
        BlendProperty.Oxidisability => 0.5,
        BlendProperty.WaterAbsorption => 25,
        BlendProperty.SwellingVolume => 3,
        _ => 1,
    };

    /// <summary>1 for what is felt in the hand, a half for figures of composition, which are not felt themselves.</summary>
    public double Weight => Property is BlendProperty.IodineValue or BlendProperty.SaponificationValue or BlendProperty.Oxidisability
        or BlendProperty.Saturated or BlendProperty.Monounsaturated or BlendProperty.Polyunsaturated or BlendProperty.Density ? 0.5 : 1;

    /// <summary>What stands for it in answers, such as <c>solid-content at 20 Cel</c>.</summary>
    public string Name
    {
        get
        {
            var word = KebabCase<BlendProperty>.Word(Property);
            return Temperature is { } t ? string.Create(CultureInfo.InvariantCulture, $"{word} at {t:0.#} Cel") : Acid is { } acid ? $"{word} {acid}" : word;
        }
    }

    /// <summary>The scale on which differences are felt alike: viscosity by its ratio, everything else as it is.</summary>
    internal double Felt(double value) => Property == BlendProperty.Viscosity ? Math.Log(Math.Max(value, 1e-9)) : value;

    /// <summary>Back from <see cref="Felt"/>.</summary>
    internal double Printed(double felt) => Property == BlendProperty.Viscosity ? Math.Exp(felt) : felt;
}
