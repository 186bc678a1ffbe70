namespace Materia.Catalogue;

/// <summary>
/// What a fat's triacylglycerols are, in percent of all of them as the source prints it: by mass, by moles or by peak area, which lie
/// close together and which few sources tell apart. A profile need not be whole; what it does not name is not known.
/// </summary>
public sealed record TriacylglycerolProfile
{
    /// <summary>What was analysed, in a few words.</summary>
    public required string Label { get; init; }

    /// <summary>Marks the profile that computations use where several stand side by side.</summary>
    public bool Used { get; init; }

    /// <summary>The shares, in the order of the source.</summary>
    public required IReadOnlyList<TriacylglycerolShare> Shares { get; init; }
}

/// <summary>The share of one triacylglycerol, or of two that the source prints as one.</summary>
public sealed record TriacylglycerolShare : Statement
{
    /// <summary>
    /// The field's short name, a letter or two for each chain from sn-1 to sn-3, such as <c>SOS</c>, <c>POP</c> or <c>LaMP</c>; two that
    /// the source gives as one sum are joined, as in <c>SLO+OOO</c>. Letters: Cy 8:0, C 10:0, La 12:0, M 14:0, P 16:0, S 18:0, A 20:0,
    /// B 22:0, Po 16:1, O 18:1, E trans 18:1, L 18:2, Ln 18:3. Most analyses do not tell the positions apart, and none here tells sn-1
    /// from sn-3: <c>POS</c> is <c>SOP</c>.
    /// </summary>
    public required string Species { get; init; }

    /// <summary>The lower end of a range [%].</summary>
    public decimal? Low { get; init; }

    /// <summary>The share in a sample [%].</summary>
    public decimal? Typical { get; init; }

    /// <summary>The upper end of a range [%].</summary>
    public decimal? High { get; init; }
}
