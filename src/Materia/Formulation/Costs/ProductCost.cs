using Materia.Chemistry;
using Materia.Formulation.Sections;

namespace Materia.Formulation.Costs;

/// <summary>What a product costs in materials, from the prices sent with the formula.</summary>
public sealed record ProductCost
{
    /// <summary>The key of the method.</summary>
    public const string MethodKey = "material-cost";

    /// <summary>The section <c>cost</c>.</summary>
    public static EvaluationSection<ProductCost> Section { get; } =
        new("cost", "What the materials cost by the prices sent along: per batch, per jar and per 100 g, with the share of each.", CostSum.Of);

    /// <summary>The ISO 4217 code of the currency.</summary>
    public string? Currency { get; init; }

    /// <summary>The lines that have a price, in the order of the formula.</summary>
    public IReadOnlyList<CostLine> Lines { get; init; } = [];

    /// <summary>The materials of 100 g as weighed in, without any loss.</summary>
    public Money? PerHundredGrams { get; init; }

    /// <summary>The materials of 100 g of what is left after the loss; absent without a batch or a loss.</summary>
    public Money? PerHundredGramsFilled { get; init; }

    /// <summary>The materials of the whole batch, by the weights rounded to the scale; absent without a batch.</summary>
    public Money? Batch { get; init; }

    /// <summary>The batch with the packaging of the jars that it fills wholly, at most those asked for; absent without packaging or jars.</summary>
    public Money? BatchWithPackaging { get; init; }

    /// <summary>One full jar; absent where the jars cannot be told.</summary>
    public JarCost? Jar { get; init; }

    /// <summary>The share of the formula's mass that has a price, 0 to 1.</summary>
    public decimal Coverage { get; init; }

    /// <summary>True when every line has a price; otherwise all sums are those of the priced lines only.</summary>
    public bool Complete { get; init; }

    /// <summary>The lines whose cost is not counted, and why.</summary>
    public IReadOnlyList<UnpricedLine> WithoutPrice { get; init; } = [];

    /// <summary>How amounts are rounded.</summary>
    public string? Rounding { get; init; }

    /// <summary>What was taken otherwise than it was written, or filled in.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no cost.</summary>
    public string? Absent { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public string Method { get; init; } = MethodKey;

    /// <summary>How the costs came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }
}

/// <summary>An amount of money, rounded to the currency's smallest unit.</summary>
/// <param name="Value">The amount.</param>
/// <param name="Currency">The ISO 4217 code.</param>
/// <param name="Low">The least that the range of a density allows; absent where the amount hangs on none.</param>
/// <param name="High">The most that it allows.</param>
public sealed record Money(decimal Value, string Currency, decimal? Low = null, decimal? High = null);

/// <summary>What one line costs.</summary>
public sealed record CostLine : MaterialName
{
    /// <summary>Its share of the formula [%].</summary>
    public required decimal Percent { get; init; }

    /// <summary>What a kilogram of the material costs.</summary>
    public required Money PerKilogram { get; init; }

    /// <summary>What it adds to 100 g as weighed in.</summary>
    public required Money InHundredGrams { get; init; }

    /// <summary>What it adds to the batch; absent without a batch.</summary>
    public Money? InBatch { get; init; }

    /// <summary>Its share of the cost of all priced lines, by the batch's weights where there is one [%], to two places; absent where all are free of charge.</summary>
    public decimal? SharePercent { get; init; }

    /// <summary>True when the price was per volume and hangs on a density.</summary>
    public bool Approximate { get; init; }
}

/// <summary>What one full jar costs.</summary>
/// <param name="MassInJar">What goes into it [g].</param>
/// <param name="Materials">The materials, with its part of what is lost.</param>
/// <param name="Packaging">The packaging.</param>
/// <param name="Total">Both together.</param>
public sealed record JarCost(double MassInJar, Money Materials, Money Packaging, Money Total);

/// <summary>A line whose cost is not counted.</summary>
public sealed record UnpricedLine : MaterialName
{
    /// <summary>Its share of the formula [%].</summary>
    public required decimal Percent { get; init; }

    /// <summary>Why, and what to do.</summary>
    public required string Reason { get; init; }
}
