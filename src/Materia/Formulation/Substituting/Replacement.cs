namespace Materia.Formulation.Substituting;

/// <summary>Materials that come in together for one that goes out.</summary>
/// <param name="Columns">The materials.</param>
/// <param name="Split">The share of the missing amount that each takes to begin with; together 1.</param>
/// <param name="Cost">What the linear model makes of it.</param>
internal sealed record Replacement(int[] Columns, double[] Split, double Cost);

/// <summary>A whole formula found: the share of every column, what it costs, and the part of that which is distance.</summary>
/// <param name="Shares">The shares [%], together exactly 100.</param>
/// <param name="Cost">The whole cost, by which the search goes.</param>
/// <param name="Distance">The distance, by which proposals are ranked.</param>
internal sealed record Draft(decimal[] Shares, double Cost, double Distance);
