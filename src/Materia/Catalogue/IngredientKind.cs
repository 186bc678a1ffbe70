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

    /// <summary>An emulsifier or solubiliser, single or blended.</summary>
    Emulsifier,

    /// <summary>A cleansing or foaming surfactant.</summary>
    Surfactant,

    /// <summary>A material that lies down on hair or skin: quaternary salts, conditioning polymers, esterquats.</summary>
    Conditioner,

    /// <summary>A silicone.</summary>
    Silicone,

    /// <summary>A preservative, or a blend of them.</summary>
    Preservative,

    /// <summary>Something that keeps oils from going rancid.</summary>
    Antioxidant,

    /// <summary>A water-binding liquid, sugar or salt.</summary>
    Humectant,

    /// <summary>A protein, a hydrolysate or an amino acid.</summary>
    Protein,

    /// <summary>A gum, polymer or other thing that thickens water or oil.</summary>
    Thickener,

    /// <summary>A vitamin or another substance used for what it does to hair or skin.</summary>
    Active,

    /// <summary>An extract of a plant, alga or ferment in whatever carrier.</summary>
    Extract,

    /// <summary>The water of a distillation, or a plant water.</summary>
    Hydrosol,

    /// <summary>Water or another solvent.</summary>
    Solvent,

    /// <summary>A pigment or dye.</summary>
    Colourant,

    /// <summary>Something that binds metal ions.</summary>
    Chelator,

    /// <summary>An acid, a base or a buffer salt.</summary>
    PhAdjuster,

    /// <summary>A resin or balsam.</summary>
    Resin,
}
