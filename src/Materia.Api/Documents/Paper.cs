namespace Materia.Api.Documents;

/// <summary>A document of a formula, before it takes a form: the same words and figures become HTML and Markdown.</summary>
/// <param name="Title">The title.</param>
/// <param name="Kind">What sort of document it is, such as <c>batch-sheet</c>.</param>
/// <param name="Blocks">What it consists of, in order.</param>
public sealed record Paper(string Title, string Kind, IReadOnlyList<PaperBlock> Blocks);

/// <summary>A part of a document.</summary>
public abstract record PaperBlock;

/// <summary>A heading.</summary>
/// <param name="Level">2 or 3; the title is 1.</param>
/// <param name="Text">The words.</param>
public sealed record Heading(int Level, string Text) : PaperBlock;

/// <summary>A paragraph.</summary>
/// <param name="Text">The words.</param>
/// <param name="IsNote">Whether it is set apart as something to heed.</param>
public sealed record Paragraph(string Text, bool IsNote = false) : PaperBlock;

/// <summary>A list.</summary>
/// <param name="Items">Its items.</param>
/// <param name="Ticked">Whether each has a box to tick.</param>
public sealed record Bullets(IReadOnlyList<string> Items, bool Ticked = false) : PaperBlock;

/// <summary>A table.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, each with a cell for every column; an empty cell is a blank to write in.</param>
public sealed record Table(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : PaperBlock;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="IsNumber">Whether it is set to the right.</param>
/// <param name="IsBlank">Whether it is left to be written in.</param>
public sealed record Column(string Heading, bool IsNumber = false, bool IsBlank = false);

/// <summary>A figure.</summary>
/// <param name="Svg">The drawing, an SVG document.</param>
/// <param name="Caption">What it shows, in words that serve without it.</param>
public sealed record Drawing(string Svg, string Caption) : PaperBlock;

/// <summary>Lines to write on by hand.</summary>
/// <param name="Labels">What goes on each.</param>
public sealed record Blanks(IReadOnlyList<string> Labels) : PaperBlock;
