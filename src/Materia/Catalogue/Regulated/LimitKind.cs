using System.Text.Json.Serialization;

namespace Materia.Catalogue.Regulated;

/// <summary>What a limit is about.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<LimitKind>))]
public enum LimitKind
{
    /// <summary>Not allowed, exceptions said in the conditions.</summary>
    Prohibited,

    /// <summary>Allowed up to a share, or under conditions.</summary>
    Restricted,

    /// <summary>Allowed as a preservative up to a share.</summary>
    Preservative,

    /// <summary>A fragrance standard for a category of product.</summary>
    Fragrance,

    /// <summary>A limit against burns by sunlight; shares of several such materials add up as ratios.</summary>
    Phototoxic,

    /// <summary>A condition on the raw material as supplied, such as its peroxide value; the finished product's share does not decide it.</summary>
    RawMaterial,
}
