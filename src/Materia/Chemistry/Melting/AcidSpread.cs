using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Melting;

/// <summary>
/// The softest and the firmest fatty-acid composition that the catalogue's ranges of a fat allow. Saturated acids of twelve carbons
/// and more grow and the others shrink, or the other way round, until a limit is met: the acids' own (those of a standard, the
/// low and high of the sample's shares, what other samples hold), and the stored range of the iodine value. Where only the iodine
/// value has a range, it alone sets how far; each side then keeps the sample's proportions. Of several ranges of the iodine value
/// the narrowest counts that agrees with the sample.
/// </summary>
internal static class AcidSpread
{
    /// <summary>Saturated acids shorter than this melt below room temperature and soften a fat.</summary>
    private const int ShortestFirm = 12;

    /// <summary>The shares of <paramref name="profile"/> [%] at one end of the spread; <see langword="null"/> when nothing tells how far that is.</summary>
    public static double[]? At(Firmness firmness, Ingredient ingredient, FattyAcidProfile profile, FattyAcid[] acids, double[] shares)
    {
        var (low, high, known) = Limits(ingredient, profile, acids, shares);
        double Worth(int i) => IodineFactor.OfTriglyceride((double)acids[i].MolarMass, acids[i].DoubleBonds);
        var now = shares.Select((s, i) => s * Worth(i)).Sum();
        var iodine = IodineRange(ingredient, now);
        var bound = firmness == Firmness.Firmest ? iodine?.Low : iodine?.High;
        if (!known)
        {
            if (iodine is not { Low: not null, High: not null })
            {
                return null;
            }

            // Room in proportion to the shares themselves, on both sides.
            (low, high) = (new double[shares.Length], [.. shares.Select(s => 2 * s)]);
        }

        var allowed = bound is not { } limit ? double.PositiveInfinity
            : firmness == Firmness.Firmest ? now - (double)limit : (double)limit - now;
        return new ShareShift(shares, low, high).Most(i => IsFirm(acids[i]) == (firmness == Firmness.Firmest), Worth, allowed);
    }

    /// <summary>
    /// The narrowest stored range that the sample's own iodine value agrees with, since a standard's limits for every origin are wider than
    /// a fat of one sort is; else the statement that computations use.
    /// </summary>
    private static Figure? IodineRange(Ingredient ingredient, double computed)
    {
        Figure? narrowest = null;
        foreach (var figure in ingredient.Properties)
        {
            if (figure is { Property: Property.IodineValue, Low: { } low, High: { } high }
                && computed >= (double)low - IodineOfMaterial.ModelError && computed <= (double)high + IodineOfMaterial.ModelError
                && (narrowest is null || high - low < narrowest.High - narrowest.Low))
            {
                narrowest = figure;
            }
        }

        return narrowest ?? StoredFigures.Find(ingredient, Property.IodineValue);
    }

    private static bool IsFirm(FattyAcid acid) => ChainOfAcid.Of(acid).IsSaturated && acid.Carbons >= ShortestFirm;

    private static (double[] Low, double[] High, bool Known) Limits(Ingredient ingredient, FattyAcidProfile used, FattyAcid[] acids, double[] shares)
    {
        double[] low = [.. shares], high = [.. shares];
        var known = false;
        foreach (var profile in ingredient.FattyAcidProfiles.Where(p => p.Of == ProfilePart.Acids))
        {
            foreach (var share in profile.Shares)
            {
                var i = Array.FindIndex(acids, a => a.Symbol == share.Acid || AcidTraits.Chain(a) == share.Acid);
                if (i < 0 || (ReferenceEquals(profile, used) && share.Low is null && share.High is null))
                {
                    continue;
                }

                // An upper limit alone starts from nought.
                low[i] = Math.Min(low[i], (double)(share.Low ?? share.Typical ?? 0));
                high[i] = Math.Max(high[i], (double)(share.High ?? share.Typical ?? share.Low ?? 0));
                known = true;
            }
        }

        return (low, high, known);
    }
}
