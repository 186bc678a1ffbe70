namespace Materia.Chemistry.Melting;

/// <summary>Which end of a fat's natural spread a composition stands for.</summary>
internal enum Firmness
{
    /// <summary>As few saturated chains as its ranges allow.</summary>
    Softest,

    /// <summary>The composition that computations use.</summary>
    Usual,

    /// <summary>As many saturated chains as its ranges allow.</summary>
    Firmest,
}
