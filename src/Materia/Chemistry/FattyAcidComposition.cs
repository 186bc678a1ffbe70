namespace Materia.Chemistry;

/// <summary>The fatty acids of a blend in percent by mass of all its fatty acids, and the alcohols of its wax esters apart.</summary>
public sealed record FattyAcidComposition
{
    /// <summary>
    /// The acids as the components' analyses name them, by falling share. A row without a position, such as <c>18:1</c>, holds what
    /// some analyses gave only as a total; the rows never overlap, and the sum over all of them is 100.
    /// </summary>
    public IReadOnlyList<FattyAcidRow> Acids { get; init; } = [];

    /// <summary>
    /// The same acids added up by chain length and double bonds, by falling share: what to compare when <c>18:1</c> and <c>18:1n-9</c>
    /// stand side by side in <see cref="Acids"/> because analyses differ in detail. The sum over all of them is 100 as well.
    /// </summary>
    public IReadOnlyList<ChainTotal> Totals { get; init; } = [];

    /// <summary>The acids added up by their number of double bonds; <see langword="null"/> when there are no acids.</summary>
    public SaturationClasses? Classes { get; init; }

    /// <summary>The alcohols of wax esters, in percent by mass of all such alcohols; free fatty alcohols with an analysis count in.</summary>
    public IReadOnlyList<FattyAcidRow> Alcohols { get; init; } = [];

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>The share of the fat-bearing mass (butters, oils, waxes, fatty acids, esters) that has a profile, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there are no acids.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>Works out the fatty acids of <paramref name="blend"/>. Absent when under half of the fat-bearing mass has a profile.</summary>
    public static FattyAcidComposition Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return CompositionSum.Of(blend);
    }
}

/// <summary>The share of one acid or alcohol.</summary>
/// <param name="Acid">The symbol, such as <c>18:1n-9</c>.</param>
/// <param name="Name">The common name.</param>
/// <param name="Percent">Its share [%].</param>
/// <param name="Low">The least share that the components' ranges allow [%].</param>
/// <param name="High">The greatest share that the components' ranges allow [%].</param>
public sealed record FattyAcidRow(string Acid, string Name, double Percent, double Low, double High);

/// <summary>All acids of one chain length and number of double bonds, whatever their isomer.</summary>
/// <param name="Chain">Carbons and double bonds, such as <c>18:1</c>; a substituted or ring acid keeps its own symbol.</param>
/// <param name="Of">The symbols of the rows that were added up.</param>
/// <param name="Percent">Their share [%].</param>
/// <param name="Low">The least share that the components' ranges allow [%].</param>
/// <param name="High">The greatest share that the components' ranges allow [%].</param>
public sealed record ChainTotal(string Chain, IReadOnlyList<string> Of, double Percent, double Low, double High);

/// <summary>The acids by number of double bonds; hydroxy, epoxy and cyclopropenoid acids count by their carbon-carbon double bonds.</summary>
/// <param name="Saturated">Without a double bond.</param>
/// <param name="Monounsaturated">With one.</param>
/// <param name="Polyunsaturated">With two or more.</param>
public sealed record SaturationClasses(ClassShare Saturated, ClassShare Monounsaturated, ClassShare Polyunsaturated);

/// <summary>The share of a class of acids.</summary>
/// <param name="Percent">Its share [%].</param>
/// <param name="Low">The least share that the components' ranges allow [%].</param>
/// <param name="High">The greatest share that the components' ranges allow [%].</param>
public sealed record ClassShare(double Percent, double Low, double High);
