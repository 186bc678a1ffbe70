using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>The triacylglycerols of a fat, as printed or generated from its fatty acids, in its usual composition and at both ends of its spread.</summary>
internal static class FatSpecies
{
    /// <summary>Molar mass given to unsaponifiable matter [g/mol]: sterols and triterpenes lie near 400 to 430; amounts are small.</summary>
    private const double UnsaponifiableMolarMass = 420;

    private static readonly PureSpecies Unsaponifiable = PureSpecies.Liquid("unsaponifiable matter", UnsaponifiableMolarMass);

    /// <summary>Hydrogenated castor oil as its main triacylglycerol: 85 °C and 150 kJ/mol, both recalled.</summary>
    private static readonly PureSpecies HydroxyFat = new("tri-12-hydroxystearin", CrystalClass.HydroxyFat, 939.5, 85, 150, Seen.Recalled, Seen.Recalled);

    /// <summary>The species of a fat whose acids are <paramref name="profile"/>.</summary>
    public static IngredientSpecies Of(Ingredient ingredient, FattyAcidProfile profile, Release release)
    {
        List<FattyAcid> acids = [];
        List<double> percents = [];
        foreach (var share in profile.Shares)
        {
            if (share.Typical is > 0 and var percent && release.FindFattyAcid(share.Acid) is { } acid)
            {
                acids.Add(acid);
                percents.Add((double)percent);
            }
        }

        var listed = percents.Sum();
        if (listed <= 0)
        {
            return new() { Species = [], Unknown = "its fatty acids are not in the reference table", Basis = "unknown" };
        }

        double[] shares = [.. percents.Select(p => 100 * p / listed)];
        double Share(Func<FattyAcid, bool> which) => acids.Zip(shares).Where(p => which(p.First)).Sum(p => p.Second);
        if (Share(a => a is { Hydroxyls: > 0, DoubleBonds: 0 }) > 50)
        {
            return new() { Species = [(HydroxyFat, 1 / HydroxyFat.MolarMass)], Basis = "hydrogenated castor oil taken as its main triacylglycerol" };
        }

        var printed = PublishedComposition.Find(ingredient);
        var usual = new FatComposition(ingredient, [.. acids], shares, printed);
        return new()
        {
            Species = Species(ingredient, usual.Usual, Firmness.Usual),
            Softest = End(ingredient, profile, usual, Firmness.Softest),
            Firmest = End(ingredient, profile, usual, Firmness.Firmest),
            Basis = printed is null ? "triacylglycerols generated from the fatty acids" : $"triacylglycerols as printed ({printed.Label}), the rest generated from the fatty acids",
            Warnings = Share(a => ChainOfAcid.Of(a).Kind == ChainKind.Other) > 2 ? [$"{ingredient.CommonName()}: hydroxy, epoxy, ring or conjugated acids have no melting data; their fats count as liquid."] : [],
        };
    }

    private static List<(PureSpecies, double)>? End(Ingredient ingredient, FattyAcidProfile profile, FatComposition usual, Firmness firmness)
    {
        var moved = usual.At(firmness, profile);
        var diluted = UnsaponifiableShare(ingredient, firmness) - UnsaponifiableShare(ingredient, Firmness.Usual);
        return moved is null && diluted == 0 ? null : Species(ingredient, moved ?? usual.Usual, firmness);
    }

    private static List<(PureSpecies, double)> Species(Ingredient ingredient, Dictionary<Triacylglycerol, double> fats, Firmness firmness)
    {
        var unsaponifiable = Math.Clamp(UnsaponifiableShare(ingredient, firmness), 0, 0.5);
        var perGram = (1 - unsaponifiable) / fats.Sum(p => p.Value * p.Key.MolarMass);
        List<(PureSpecies, double)> species = [.. fats.Select(p => (PureSpecies.Of(p.Key), p.Value * perGram))];
        if (unsaponifiable > 0)
        {
            species.Add((Unsaponifiable, unsaponifiable / UnsaponifiableMolarMass));
        }

        return species;
    }

    private static double UnsaponifiableShare(Ingredient ingredient, Firmness firmness)
    {
        if (StoredFigures.Find(ingredient, Property.UnsaponifiableMatter) is not { } stored)
        {
            return 0;
        }

        return (double)(firmness switch
        {
            Firmness.Softest => stored.Greatest(),
            // A bare upper limit says nothing of the least.
            Firmness.Firmest => stored.Low ?? stored.Central(),
            _ => stored.Central(),
        }) / 100;
    }
}
