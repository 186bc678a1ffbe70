using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Formulation.Optimising;

/// <summary>What of a blend can be compared or aimed at; unit and noticeable step of each stand in <see cref="BlendFigure"/>.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<BlendProperty>))]
public enum BlendProperty
{
    /// <summary>Solid content of the fat phase at a temperature [%].</summary>
    SolidContent,

    /// <summary>The temperature at which it is clear [Cel].</summary>
    ClearPoint,

    /// <summary>Dynamic viscosity at a temperature, the fats melted [mPa.s].</summary>
    Viscosity,

    /// <summary>Iodine value of the lipid phase [g/(100.g)].</summary>
    IodineValue,

    /// <summary>Saponification value of the lipid phase [mg/g].</summary>
    SaponificationValue,

    /// <summary>Density at a temperature, the fats melted [g/mL].</summary>
    Density,

    /// <summary>The oxidisability index of the fatty acids [1].</summary>
    Oxidisability,

    /// <summary>The share of one fatty acid, or of a chain such as <c>18:1</c>, in all fatty acids [%].</summary>
    FattyAcid,

    /// <summary>Saturated fatty acids [%].</summary>
    Saturated,

    /// <summary>Monounsaturated fatty acids [%].</summary>
    Monounsaturated,

    /// <summary>Polyunsaturated fatty acids [%].</summary>
    Polyunsaturated,

    /// <summary>The HLB that the oil phase asks of an emulsifier for oil in water [1].</summary>
    RequiredHlb,

    /// <summary>What the materials cost for a kilogram of the formula, in the currency of the prices given.</summary>
    Cost,

    /// <summary>The oil that the powders take up, their mean by mass [g/(100.g)].</summary>
    OilAbsorption,

    /// <summary>The water that the powders take up, their mean by mass [g/(100.g)].</summary>
    WaterAbsorption,

    /// <summary>The cation-exchange capacity of the clays, their mean by mass [cmol/kg].</summary>
    CationExchangeCapacity,

    /// <summary>The volume to which 2 g of the clays swell in water, their mean by mass [mL].</summary>
    SwellingVolume,

    /// <summary>The HLB of the emulsifiers, their mean by mass [1].</summary>
    Hlb,
}
