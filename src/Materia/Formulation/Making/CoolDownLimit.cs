using Materia.Catalogue;

namespace Materia.Formulation.Making;

/// <summary>How hot a cool-down addition may go in.</summary>
/// <param name="NotAbove">No hotter than this [Cel].</param>
/// <param name="BestBelow">Better below this [Cel].</param>
internal readonly record struct CoolDownLimit(double NotAbove, double BestBelow)
{
    /// <summary>Additions without a figure of their own bear the heat of a melt for the moment of pouring [Cel] (common practice).</summary>
    private const double Usual = 60;

    /// <summary>What the trade calls the cool-down phase [Cel] (common practice).</summary>
    private const double UsualBest = 40;

    /// <summary>How far below its flash point a liquid is kept [K] (common practice).</summary>
    private const double FlashMargin = 5;

    /// <param name="line">The line.</param>
    /// <param name="room">The temperature of the room [Cel]; no addition can be asked to go in colder.</param>
    public static CoolDownLimit Of(PlacedLine line, double room)
    {
        var flash = line.Traits.FlashPoint - FlashMargin ?? double.PositiveInfinity;
        var bears = line.Traits.Bears ?? (line.IsPowder ? double.PositiveInfinity : Usual);
        if (line.IsPowder && !line.IsVolatile)
        {
            return new(Math.Max(room, Math.Min(bears, 90)), Math.Min(60, Math.Max(room, bears)));
        }

        var notAbove = Math.Max(room, Math.Floor(Math.Min(flash, Math.Min(bears, Usual))));
        var best = line.Traits.PhaseNote?.Phase == ProcessPhase.CoolDown ? line.Traits.BestBelow ?? UsualBest : UsualBest;
        return new(notAbove, Math.Max(room, Math.Min(notAbove, best)));
    }
}
