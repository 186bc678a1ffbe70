namespace Materia.Chemistry.Melting;

/// <summary>
/// A rule of ours for grainy butters: risk is high when symmetric monounsaturated fats (SOS, POS, POP) are above 20 % of the fat
/// phase and the solid content falls by fewer than 15 points from 20 to 30 °C to 3 % or more, so that crystals always survive a warm
/// day and grow in the next cool one; possible when they are above 20 % alone. Crystals are felt above some 40 µm (meng-2013, read).
/// </summary>
internal static class GraininessRule
{
    private const double Much = 0.20;
    private const double Steep = 15;

    /// <summary>Less solid than this is not felt as grains [%].</summary>
    private const double Felt = 3;

    public static Graininess Of(BlendSpecies species, SolidContentCurve curve)
    {
        double symmetric = 0, all = 0;
        for (var i = 0; i < species.Moles.Count; i++)
        {
            var mass = species.Moles[i] * species.Space.Species[i].MolarMass;
            all += mass;
            symmetric += species.Space.Species[i].Class == CrystalClass.SymmetricMonounsaturated ? mass : 0;
        }

        if (all <= 0 || symmetric < Much * all || curve.At(20) < Felt)
        {
            return new("low", "Symmetric monounsaturated fats such as SOS, which grow coarse crystals, are under a fifth of the fat phase.");
        }

        const string Cure = "Cool it quickly through the set, stirring, in small vessels; 3 to 5 % of a wax makes crystals finer; keep it from warming and cooling in turn.";
        return curve.At(30) >= Felt && curve.At(20) - curve.At(30) < Steep
            ? new("high", $"Fats such as SOS are over a fifth of the fat phase and some of their crystals survive a warm day, to grow in the next cool one. {Cure}")
            : new("possible", $"Fats such as SOS are over a fifth of the fat phase; slow cooling lets them grow coarse. {Cure}");
    }
}
