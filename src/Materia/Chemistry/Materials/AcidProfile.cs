using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>A sample profile, its shares brought to a sum of one.</summary>
internal sealed class AcidProfile
{
    private AcidProfile(FattyAcidProfile stored, FattyAcid[] acids, double[] shares, double sum)
    {
        Stored = stored;
        Acids = acids;
        Shares = shares;
        Sum = sum;
        double moles = 0;
        double carbons = 0;
        double doubleBonds = 0;
        double hydroxyls = 0;
        double hydroxyAcids = 0;
        double weight = 0;
        double peroxidizability = 0;
        for (var i = 0; i < acids.Length; i++)
        {
            var acid = acids[i];
            var mole = shares[i] / (double)acid.MolarMass;
            moles += mole;
            carbons += mole * acid.Carbons;
            doubleBonds += mole * acid.DoubleBonds;
            hydroxyls += mole * acid.Hydroxyls;
            hydroxyAcids += acid.Hydroxyls > 0 ? mole : 0;
            weight += shares[i] * Rules.CoxIndex.Weight(acid.DoubleBonds);
            peroxidizability += 100 * shares[i] * Rules.PeroxidizabilityIndex.Weight(acid.DoubleBonds);
            HasFourDoubleBonds |= acid.DoubleBonds >= 4;
            Conjugated += AcidTraits.IsConjugated(acid) ? 100 * shares[i] : 0;
            Epoxy += AcidTraits.IsEpoxy(acid) ? 100 * shares[i] : 0;
            Ring += AcidTraits.HasRing(acid) ? 100 * shares[i] : 0;
        }

        MeanMolarMass = 1 / moles;
        MeanCarbons = carbons / moles;
        MeanDoubleBonds = doubleBonds / moles;
        MeanHydroxyls = hydroxyls / moles;
        HydroxyFraction = hydroxyAcids / moles;
        CoxValue = weight;
        Peroxidizability = peroxidizability;
    }

    /// <summary>The profile as stored.</summary>
    public FattyAcidProfile Stored { get; }

    /// <summary>The acids, in the order of <see cref="Stored"/>.</summary>
    public FattyAcid[] Acids { get; }

    /// <summary>The share of each by mass, together 1.</summary>
    public double[] Shares { get; }

    /// <summary>What the stored shares added up to [%].</summary>
    public double Sum { get; }

    /// <summary>Mean molar mass by moles [g/mol].</summary>
    public double MeanMolarMass { get; }

    /// <summary>Mean carbons of a chain, by moles.</summary>
    public double MeanCarbons { get; }

    /// <summary>Mean double bonds of a chain, by moles.</summary>
    public double MeanDoubleBonds { get; }

    /// <summary>Mean hydroxyl groups of a chain, by moles.</summary>
    public double MeanHydroxyls { get; }

    /// <summary>Mole fraction of hydroxy acids.</summary>
    public double HydroxyFraction { get; }

    /// <summary>The oxidisability index.</summary>
    public double CoxValue { get; }

    /// <summary>The peroxidizability index.</summary>
    public double Peroxidizability { get; }

    /// <summary>True when an acid with four or more double bonds occurs.</summary>
    public bool HasFourDoubleBonds { get; }

    /// <summary>Conjugated acids [%].</summary>
    public double Conjugated { get; }

    /// <summary>Epoxy acids [%].</summary>
    public double Epoxy { get; }

    /// <summary>Cyclopropenoid acids [%].</summary>
    public double Ring { get; }

    /// <summary>
    /// Reads the sample that computations use: the marked one where several stand side by side. <see langword="null"/> when there is
    /// none; with <paramref name="fault"/> when there is one that cannot be used.
    /// </summary>
    public static AcidProfile? Find(Ingredient ingredient, ProfilePart part, Release release, out string? fault)
    {
        fault = null;
        FattyAcidProfile? chosen = null;
        foreach (var profile in ingredient.FattyAcidProfiles)
        {
            if (profile.Kind == ProfileKind.Sample && profile.Of == part && (chosen is null || (profile.Used && !chosen.Used)))
            {
                chosen = profile;
            }
        }

        return chosen is null ? null : Read(chosen, release, out fault);
    }

    private static AcidProfile? Read(FattyAcidProfile stored, Release release, out string? fault)
    {
        var acids = new FattyAcid[stored.Shares.Count];
        var shares = new double[stored.Shares.Count];
        double sum = 0;
        for (var i = 0; i < acids.Length; i++)
        {
            var share = stored.Shares[i];
            if (release.FindFattyAcid(share.Acid) is not { } acid)
            {
                fault = $"its profile names {share.Acid}, which the fatty-acid table does not hold";
                return null;
            }

            acids[i] = acid;
            shares[i] = (double)(share.Typical ?? (((share.Low ?? 0) + (share.High ?? 0)) / 2));
            sum += shares[i];
        }

        // Outside these limits a part of the analysis is missing or counted twice, and bringing it to 100 would hide that.
        if (!(sum is >= 95 and <= 102))
        {
            fault = $"its profile adds up to {Written.Number(sum)} %, not to 95 to 102 %";
            return null;
        }

        for (var i = 0; i < shares.Length; i++)
        {
            shares[i] /= sum;
        }

        fault = null;
        return new AcidProfile(stored, acids, shares, sum);
    }
}
