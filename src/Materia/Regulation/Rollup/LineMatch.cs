namespace Materia.Regulation.Rollup;

/// <summary>What the material of one line holds of a set.</summary>
/// <param name="Line">The place of the line in the formula.</param>
/// <param name="Match">What its material holds.</param>
internal readonly record struct LineMatch(int Line, SetMatch Match);
