using System.Text.Json.Serialization;

namespace Materia.Catalogue;

/// <summary>The charge that an ingredient carries in water at the pH of its use.</summary>
public sealed record ChargeStatement : Statement
{
    /// <summary>The charge.</summary>
    public required IonicCharge Charge { get; init; }
}

/// <summary>Charges of surface-active and water-soluble materials.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<IonicCharge>))]
public enum IonicCharge
{
    /// <summary>No charge.</summary>
    Nonionic,

    /// <summary>Negative, soaps and clay faces included.</summary>
    Anionic,

    /// <summary>Positive.</summary>
    Cationic,

    /// <summary>Both, or one or the other with the pH.</summary>
    Amphoteric,
}
