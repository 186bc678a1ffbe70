using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>The kinds of raw material, by what a maker does with them.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<IngredientKind>))]
public enum IngredientKind
{
    /// <summary>A triglyceride fat that is solid or pasty at room temperature.</summary>
    Butter,

    /// <summary>A triglyceride oil, liquid at room temperature; liquid wax esters such as jojoba are sold and used as oils and stand here too.</summary>
    Oil,

    /// <summary>A natural or synthetic wax.</summary>
    Wax,

    /// <summary>A free fatty alcohol or a mixture of them.</summary>
    FattyAlcohol,

    /// <summary>A free fatty acid or a mixture of them.</summary>
    FattyAcid,

    /// <summary>A liquid or solid ester that is not a natural fat.</summary>
    Ester,

    /// <summary>A hydrocarbon such as squalane, paraffin or petrolatum.</summary>
    Hydrocarbon,

    /// <summary>A clay mineral or a rock sold as a clay.</summary>
    Clay,

    /// <summary>A mineral, charcoal or plant powder.</summary>
    Powder,

    /// <summary>A starch or flour.</summary>
    Starch,

    /// <summary>A volatile oil distilled or pressed from a plant.</summary>
    EssentialOil,
}
