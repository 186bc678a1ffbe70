namespace Materia.Chemistry.Melting;

/// <summary>Which class a triacylglycerol crystallises in.</summary>
public static class CrystalClasses
{
    /// <summary>Mean carbons of the saturated chains below which a fat counts as lauric.</summary>
    private const double LauricMean = 15;

    /// <summary>The class of <paramref name="fat"/>, by the number and place of its unsaturated chains and the length of the saturated ones.</summary>
    public static CrystalClass Of(Triacylglycerol fat)
    {
        if (!fat.HasMeltingData)
        {
            return CrystalClass.Liquid;
        }

        switch (fat.UnsaturatedChains)
        {
            case 3:
                return CrystalClass.Triunsaturated;
            case 2:
                return CrystalClass.Diunsaturated;
        }

        double carbons = 0;
        var saturated = 0;
        foreach (var chain in (ReadOnlySpan<Chain>)[fat.Sn1, fat.Sn2, fat.Sn3])
        {
            if (chain.IsSaturated)
            {
                carbons += chain.Carbons;
                saturated++;
            }
        }

        if (carbons / saturated < LauricMean)
        {
            return CrystalClass.Lauric;
        }

        if (fat.UnsaturatedChains == 0)
        {
            return CrystalClass.Trisaturated;
        }

        return fat.Sn2.IsSaturated ? CrystalClass.AsymmetricMonounsaturated : CrystalClass.SymmetricMonounsaturated;
    }
}
