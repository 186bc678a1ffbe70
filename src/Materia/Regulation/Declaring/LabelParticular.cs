using System.Text.Json.Serialization;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>One particular that a label must carry besides the ingredient list.</summary>
/// <param name="Particular">What it is, in a few words.</param>
/// <param name="WhatToPrint">What has to be printed, and when it may be left out.</param>
/// <param name="SuppliedBy">Who knows it.</param>
/// <param name="Rule">The number of the rule.</param>
public sealed record LabelParticular(string Particular, string WhatToPrint, ParticularSupplier SuppliedBy, string Rule);

/// <summary>Who has to supply a particular.</summary>
[JsonConverter(typeof(KebabCaseEnumConverter<ParticularSupplier>))]
public enum ParticularSupplier
{
    /// <summary>Whoever makes the product.</summary>
    Maker,

    /// <summary>Whoever answers for the product before the law.</summary>
    ResponsiblePerson,

    /// <summary>The qualified safety assessor.</summary>
    SafetyAssessor,

    /// <summary>This evaluation drafts it; the others must check it.</summary>
    Draft,
}

/// <summary>Words to print.</summary>
/// <param name="Text">The words, as the instrument gives them.</param>
/// <param name="Because">The substance or circumstance that asks for them.</param>
/// <param name="Ingredients">The materials that bring it.</param>
/// <param name="Authority">Whose words they are; those of a law are mandatory, the others advice.</param>
/// <param name="Instrument">The key of the source.</param>
/// <param name="Entry">The entry in it.</param>
/// <param name="Evidence">How the words were seen.</param>
public sealed record LabelWarning(
    string Text, string Because, IReadOnlyList<string> Ingredients, Authority Authority, string Instrument, string? Entry, Evidence Evidence);
