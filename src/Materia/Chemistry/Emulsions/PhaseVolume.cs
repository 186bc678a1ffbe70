using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Emulsions;

/// <summary>The phases of an emulsion by volume.</summary>
internal static class PhaseVolume
{
    private const double UsualOil = 0.92;
    private const double Temperature = 25;

    // Equal drops packed as closely as they go fill this much of the volume.
    private const double ClosePacking = 74;

    public static PhaseVolumes Of(EmulsionParts parts, Release release)
    {
        var index = MaterialIndex.For(release);
        var oil = parts.Oils.Sum(p => (double)p.Share.Typical / (index.Find(p.Ingredient!).Density?.At(Temperature).Value ?? UsualOil));
        var water = parts.All
            .Where(p => !parts.Oils.Contains(p) && !parts.Emulsifiers.Any(e => e.Component == p.Component) && !(p.Kind is { } kind && Kinds.IsPowder(kind)))
            .Sum(p => (double)p.Share.Typical);
        var percent = Math.Round(100 * oil / (oil + water), 2);
        return new PhaseVolumes(percent, Math.Round(100 - percent, 2), "The type of the emulsion is not known.");
    }

    public static string Note(EmulsionType type, PhaseVolumes phases)
    {
        var dispersed = type == EmulsionType.OilInWater ? phases.OilPercent : phases.WaterPercent;
        return dispersed > ClosePacking
            ? "The dispersed phase fills more than 74 % of the volume, closer than round drops pack: such an emulsion is stiff, and turns over or breaks easily."
            : dispersed < 50 ? "The dispersed phase is the smaller one, as in usual creams and lotions."
            : "The dispersed phase is the larger one: the emulsion will be thick, and nearer to turning over.";
    }
}
