using Materia.Catalogue;

namespace Materia.Regulation.Cautioning;

/// <summary>A formula by its single materials, as the rules of caution look at it.</summary>
internal sealed class CautionedFormula
{
    public CautionedFormula(RegulatedFormula formula)
    {
        Formula = formula;
        Parts = [.. formula.Lines.Where(l => l.Percent > 0).SelectMany(l => MaterialPartShare.Of(l.Ingredient, formula.Release).Select(p => new CautionedPart(l.Name, l.Ingredient, p, p.Typical * l.Percent / 100)))];
    }

    public RegulatedFormula Formula { get; }

    public IReadOnlyList<CautionedPart> Parts { get; }

    public ProductUse? Use => Formula.Use;

    public bool MayStayOn => Use?.Exposure != Exposure.RinseOff;

    /// <summary>The lines with a material for which something holds, each once; <see langword="null"/> when there is none.</summary>
    public IReadOnlyList<string>? Lines(Func<CautionedPart, bool> holds)
    {
        var lines = Parts.Where(holds).Select(p => p.Line).Distinct(StringComparer.Ordinal).ToList();
        return lines.Count == 0 ? null : lines;
    }

    /// <summary>The lines of these kinds, or with a part of these kinds.</summary>
    public IReadOnlyList<string>? OfKinds(params IngredientKind[] kinds) => Lines(p => kinds.Contains(p.Bought.Kind) || (p.Kind is { } kind && kinds.Contains(kind)));

    /// <summary>The lines with one of these INCI names, written in capitals.</summary>
    public IReadOnlyList<string>? Named(params string[] names) => Lines(p => names.Contains(p.Inci, StringComparer.Ordinal));

    /// <summary>The share of materials of these kinds [%].</summary>
    public decimal Share(params IngredientKind[] kinds) => Parts.Where(p => p.Kind is { } kind && kinds.Contains(kind)).Sum(p => p.Percent);
}

/// <summary>A single material in a formula.</summary>
/// <param name="Line">What results call the line that brings it.</param>
/// <param name="Bought">The record of the material that was bought.</param>
/// <param name="Part">What it is.</param>
/// <param name="Percent">Its share of the formula [%].</param>
internal sealed record CautionedPart(string Line, Ingredient Bought, MaterialPartShare Part, decimal Percent)
{
    public Ingredient? Ingredient => Part.Ingredient;

    public IngredientKind? Kind => Part.Ingredient?.Kind;

    public string Inci => (Part.InciName ?? Part.Ingredient?.InciName())?.ToUpperInvariant() ?? string.Empty;

    /// <summary>Whether it is one of these substances, by CAS number, or may hold one of them to at least <paramref name="share"/> percent.</summary>
    public bool Holds(string[] cas, decimal share) =>
        Ingredient?.Constituents.Any(c => c.Cas is { } number && cas.Contains(number, StringComparer.Ordinal) && (c.High ?? c.Typical ?? c.Low ?? share) >= share) == true
        || (Part.Cas is { } own && cas.Contains(own, StringComparer.Ordinal));
}
