using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>
/// A draft of the ingredient list with what else a label must carry. It is a draft for the responsible person and the safety
/// assessor, never an approval.
/// </summary>
public sealed record Declaration
{
    /// <summary>The method's key.</summary>
    public const string MethodKey = "label-declaration";

    /// <summary>The list as it would be printed.</summary>
    public required string Text { get; init; }

    /// <summary>The same list with each essential oil under its own name in place of the word for perfume; absent where there is none.</summary>
    public string? Alternative { get; init; }

    /// <summary>The law whose rules were applied.</summary>
    public required Authority Law { get; init; }

    /// <summary>The names in the order of <see cref="Text"/>.</summary>
    public required IReadOnlyList<DeclarationEntry> Entries { get; init; }

    /// <summary>What may and may not be moved in the list.</summary>
    public required IReadOnlyList<DeclarationGroupNote> Groups { get; init; }

    /// <summary>Materials that have no name for a label yet; they stand in the text between square brackets.</summary>
    public required IReadOnlyList<UnresolvedName> Unresolved { get; init; }

    /// <summary>What else must stand on the label, and who has to supply it.</summary>
    public required IReadOnlyList<LabelParticular> Checklist { get; init; }

    /// <summary>Words that must be printed, or that guidance asks for.</summary>
    public required IReadOnlyList<LabelWarning> Warnings { get; init; }

    /// <summary>The rules that were applied, with where each was seen.</summary>
    public required IReadOnlyList<LabelRule> Rules { get; init; }

    /// <summary>What must be known to use the draft.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The key of the method.</summary>
    public required string Method { get; init; }

    /// <summary>How each name came to its share and place; only when asked for.</summary>
    public IReadOnlyList<DeclarationStep>? Steps { get; init; }
}

/// <summary>What may be done with one part of the list.</summary>
/// <param name="Group">The part.</param>
/// <param name="First">The first name of it.</param>
/// <param name="Count">How many names it has.</param>
/// <param name="Meaning">What may be moved.</param>
/// <param name="Rules">The numbers of the rules.</param>
public sealed record DeclarationGroupNote(DeclarationGroup Group, string First, int Count, string Meaning, IReadOnlyList<string> Rules);

/// <summary>A material that cannot be named on a label yet.</summary>
/// <param name="Ingredient">What results call it.</param>
/// <param name="Percent">Its share of the formula [%].</param>
/// <param name="WhatToDo">How to come by a name.</param>
public sealed record UnresolvedName(string Ingredient, decimal Percent, string WhatToDo);

/// <summary>How one name came to its share and place.</summary>
/// <param name="Name">The name.</param>
/// <param name="Arithmetic">The sum of the shares that it stands for.</param>
/// <param name="Place">Why it stands where it does.</param>
/// <param name="Rules">The numbers of the rules.</param>
public sealed record DeclarationStep(string Name, string Arithmetic, string Place, IReadOnlyList<string> Rules);
