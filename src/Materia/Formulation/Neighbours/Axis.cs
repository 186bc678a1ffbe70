using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Neighbours;

/// <summary>One property in which ingredients are compared.</summary>
/// <param name="Property">Its word in answers, such as <c>solid-content</c>.</param>
/// <param name="Temperature">The temperature it is taken at [Cel], where it depends on one.</param>
/// <param name="Unit">The UCUM code of its unit.</param>
/// <param name="Step">What a maker notices, in the unit; for a logarithmic one the factor that is noticed [1].</param>
/// <param name="Weight">Its weight in the mean of squares [1].</param>
/// <param name="Logarithmic">Whether factors count and not differences.</param>
/// <param name="Value">Its value for an ingredient, or <see langword="null"/> where it is not known.</param>
internal sealed record Axis(
    string Property, double? Temperature, string Unit, double Step, double Weight, bool Logarithmic, Func<AxisInput, double?> Value)
{
    /// <summary>No difference counts more than this many steps: past it a thing is simply another thing.</summary>
    public const double MostSteps = 8;

    /// <summary>How far apart two values lie, in steps that a maker notices.</summary>
    public double Steps(double asked, double candidate)
    {
        if (!Logarithmic)
        {
            return Math.Min(MostSteps, Math.Abs(candidate - asked) / Step);
        }

        // Nought has no logarithm; beside anything else it is as far as can be.
        return asked <= 0 || candidate <= 0
            ? asked <= 0 && candidate <= 0 ? 0 : MostSteps
            : Math.Min(MostSteps, Math.Abs(Math.Log(candidate / asked)) / Math.Log(Step));
    }
}

/// <summary>What the value of an axis is read from.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Material">What follows from its record.</param>
/// <param name="Solids">Its computed solid contents in the order of <see cref="Axes.SolidTemperatures"/> [%], or <see langword="null"/>.</param>
internal sealed record AxisInput(Ingredient Ingredient, Material Material, double[]? Solids)
{
    /// <summary>The central value of a stored property.</summary>
    public double? Stored(Property property) => StoredFigures.Find(Ingredient, property) is { } figure ? (double)figure.Central() : null;

    /// <summary>The lower end of a stored range.</summary>
    public double? Low(Property property) => StoredFigures.Find(Ingredient, property) is { } figure ? (double)figure.Least() : null;

    /// <summary>The upper end of a stored range.</summary>
    public double? High(Property property) => StoredFigures.Find(Ingredient, property) is { } figure ? (double)figure.Greatest() : null;
}
