using Materia.Chemistry.Melting;

namespace Materia.Chemistry;

/// <summary>
/// How a blend melts once it is well crystallised: its solid content against temperature, where it clears, and what that means
/// in the hand. Powders are reported apart and never counted as fat crystals.
/// </summary>
public sealed record BlendMelting
{
    /// <summary>Solid content of the fat phase from −10 to 80 °C in steps of 1 °C; empty when it is absent.</summary>
    public IReadOnlyList<SolidContentPoint> SolidContent { get; init; } = [];

    /// <summary>Where melting starts: nine tenths of what is solid at 10 °C are left [Cel].</summary>
    public ComputedFigure? MeltingStart { get; init; }

    /// <summary>Where it is clear: 1 % solid is left, or a twentieth of what is solid at 10 °C where that is less [Cel].</summary>
    public ComputedFigure? ClearPoint { get; init; }

    /// <summary>Where a column of it would slip in an open capillary: 4 % solid is left [Cel].</summary>
    public ComputedFigure? SlipPoint { get; init; }

    /// <summary>The share of what is solid at 20 °C that melts by 32 °C, the temperature of skin [%].</summary>
    public ComputedFigure? MeltsOnSkin { get; init; }

    /// <summary>The heat that melting takes up between 20 °C and the clear point, per gram of fat phase [J/g].</summary>
    public ComputedFigure? LatentHeat { get; init; }

    /// <summary>How it feels at 5, 20, 25, 30, 35 and 40 °C.</summary>
    public IReadOnlyList<TexturePoint> Texture { get; init; } = [];

    /// <summary>The species that melt last.</summary>
    public IReadOnlyList<LastToMelt> LastToMelt { get; init; } = [];

    /// <summary>The crystal forms assumed, and what slow or quick cooling changes.</summary>
    public string? Crystals { get; init; }

    /// <summary>Whether it may turn grainy; <see langword="null"/> when it is absent.</summary>
    public Graininess? Graininess { get; init; }

    /// <summary>Powders, by mass of the whole formula [%].</summary>
    public double PowderPercent { get; init; }

    /// <summary>The key of the <see cref="Catalogue.Method"/>.</summary>
    public required string Method { get; init; }

    /// <summary>How species of one class share a crystal in it; another than <c>class-solutions</c> was asked for by name.</summary>
    public MeltingModel Model { get; init; }

    /// <summary>The share of the fat phase whose melting is known, 0 to 1.</summary>
    public required double Coverage { get; init; }

    /// <summary>What limits the result.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Why there is no curve.</summary>
    public string? Absent { get; init; }

    /// <summary>How the result came about; only when asked for.</summary>
    public IReadOnlyList<ExplainedStep>? Steps { get; init; }

    /// <summary>
    /// Works out how <paramref name="blend"/> melts. Absent when it has no fat phase, or when less than 80 % of the fat phase
    /// has a composition to work from.
    /// </summary>
    public static BlendMelting Of(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        var melting = MeltingSum.Of(blend);
        return blend.MeltingModel == MeltingModel.ClassSolutions
            ? melting
            : melting with
            {
                Model = blend.MeltingModel,
                Warnings = [.. melting.Warnings, "It was asked for with another model than the recommended one, for comparison and teaching; the error given for the method is that of class-solutions."],
            };
    }

    /// <summary>The share of the fat phase of <paramref name="blend"/> whose melting is known, 0 to 1, without working the curve out.</summary>
    public static double CoverageOf(Blend blend)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return MeltingSpace.For(blend).Compose(blend).Coverage;
    }
}

/// <summary>Solid content at one temperature.</summary>
/// <param name="Temperature">The temperature [Cel].</param>
/// <param name="Percent">Solid [% by mass of the fat phase].</param>
/// <param name="Low">The lower end of its band.</param>
/// <param name="High">The upper end of its band.</param>
public sealed record SolidContentPoint(double Temperature, double Percent, double Low, double High);

/// <summary>How the fat phase feels at one temperature.</summary>
/// <param name="Temperature">The temperature [Cel].</param>
/// <param name="Words">The texture in the trade's plain words.</param>
/// <param name="Percent">Solid [% by mass of the fat phase].</param>
/// <param name="Note">What moved it, such as a wax that gels the oil.</param>
public sealed record TexturePoint(double Temperature, string Words, double Percent, string? Note);

/// <summary>A species that is among the last to melt.</summary>
/// <param name="Species">Its short name, such as <c>SOS</c>.</param>
/// <param name="ShareOfSolid">Its share of the last tenth of the solid, 0 to 1.</param>
/// <param name="Ingredients">The ingredients that bring it, most first.</param>
public sealed record LastToMelt(string Species, double ShareOfSolid, IReadOnlyList<string> Ingredients);

/// <summary>Whether coarse crystals may grow.</summary>
/// <param name="Risk"><c>low</c>, <c>possible</c> or <c>high</c>.</param>
/// <param name="Reason">Why, and what to do.</param>
public sealed record Graininess(string Risk, string Reason);
