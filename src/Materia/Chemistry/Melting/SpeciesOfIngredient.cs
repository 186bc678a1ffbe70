using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>Turns what the catalogue says of an ingredient into the species that melt.</summary>
public static class SpeciesOfIngredient
{
    /// <summary>Molar mass given to unsaponifiable matter and to volatile or non-crystallising liquids [g/mol]: sterols and triterpenes lie near 400 to 430; amounts are small.</summary>
    private const double UnsaponifiableMolarMass = 420;
    private const double VolatileMolarMass = 150;

    /// <summary>An ester, alcohol or hydrocarbon whose melting figures all lie below this counts as liquid [Cel].</summary>
    private const decimal LiquidBelow = 15;

    private static readonly PureSpecies Unsaponifiable = new("unsaponifiable matter", CrystalClass.Liquid, UnsaponifiableMolarMass, double.NaN, 0, "counted-as-liquid");
    private static readonly PureSpecies Volatile = new("essential oil", CrystalClass.Liquid, VolatileMolarMass, double.NaN, 0, "counted-as-liquid");
    private static readonly PureSpecies WaxEsterOil = new("liquid wax esters", CrystalClass.Liquid, 606, double.NaN, 0, "counted-as-liquid");
    private static readonly PureSpecies LiquidEmollient = new("liquid emollient", CrystalClass.Liquid, 400, double.NaN, 0, "counted-as-liquid");

    /// <summary>Hydrogenated castor oil as its main triacylglycerol: 85 °C and 150 kJ/mol, both recalled.</summary>
    private static readonly PureSpecies HydroxyFat = new("tri-12-hydroxystearin", CrystalClass.HydroxyFat, 939.5, 85, 150, "recalled");

    /// <summary>The species of <paramref name="ingredient"/>, with its fatty acids looked up in <paramref name="release"/>.</summary>
    public static IngredientSpecies Of(Ingredient ingredient, Release release) => ingredient.Kind switch
    {
        _ when Kinds.IsPowder(ingredient.Kind) => new() { Species = [], IsFiller = true, Basis = "filler" },
        IngredientKind.EssentialOil => Only(Volatile, "counted as liquid"),
        IngredientKind.Wax when NaturalWaxes.Find(ingredient.Id) is { } parts =>
            new() { Species = [.. parts.Select(p => (p.Species, p.MassFraction / p.Species.MolarMass))], Basis = "pseudo-components of a natural wax" },
        _ => OfProfiles(ingredient, release),
    };

    private static IngredientSpecies OfProfiles(Ingredient ingredient, Release release)
    {
        var acids = Profile(ingredient, ProfilePart.Acids);
        var alcohols = Profile(ingredient, ProfilePart.Alcohols);
        return (ingredient.Kind, acids, alcohols) switch
        {
            (_, not null, not null) => Only(WaxEsterOil, "liquid wax esters, whose saturated part is not modelled"),
            (IngredientKind.FattyAlcohol, _, not null) => Free(alcohols, release, FreeChains.Alcohol, "free alcohols"),
            (IngredientKind.FattyAcid, not null, _) => Free(acids, release, FreeChains.Acid, "free acids"),
            (IngredientKind.Butter or IngredientKind.Oil or IngredientKind.Wax or IngredientKind.Ester, not null, null) => Fat(ingredient, acids, release),
            _ when IsLiquid(ingredient) => Only(LiquidEmollient, "counted as liquid: it melts below 15 °C"),
            _ => new() { Species = [], Unknown = "the catalogue holds no composition that its melting could be worked out from", Basis = "unknown" },
        };
    }

    private static bool IsLiquid(Ingredient ingredient) =>
        ingredient.Kind is IngredientKind.Ester or IngredientKind.Hydrocarbon or IngredientKind.FattyAlcohol
        && ingredient.Properties.Where(p => p.Property is Property.MeltingRange or Property.MeltingPoint).Select(p => p.Greatest()).DefaultIfEmpty(100).Max() < LiquidBelow;

    private static IngredientSpecies Free(FattyAcidProfile profile, Release release, Func<Chain, string, PureSpecies> make, string basis)
    {
        var species = new List<(PureSpecies, double)>();
        var total = profile.Shares.Sum(s => s.Typical ?? 0);
        foreach (var share in profile.Shares)
        {
            if (release.FindFattyAcid(share.Acid) is { } acid && share.Typical is > 0 and var percent)
            {
                var one = make(ChainOfAcid.Of(acid), acid.Name);
                species.Add((one, (double)(percent / total) / one.MolarMass));
            }
        }

        return new() { Species = species, Basis = basis };
    }

    private static IngredientSpecies Fat(Ingredient ingredient, FattyAcidProfile profile, Release release)
    {
        var chains = new Dictionary<Chain, double>();
        double other = 0, hydroxystearic = 0, listed = 0;
        foreach (var share in profile.Shares)
        {
            var percent = (double)(share.Typical ?? 0);
            if (percent <= 0 || release.FindFattyAcid(share.Acid) is not { } acid)
            {
                continue;
            }

            var chain = ChainOfAcid.Of(acid);
            chains[chain] = chains.GetValueOrDefault(chain) + (percent / (double)acid.MolarMass);
            listed += percent;
            other += chain.Kind == ChainKind.Other ? percent : 0;
            hydroxystearic += acid is { Hydroxyls: > 0, DoubleBonds: 0 } ? percent : 0;
        }

        if (listed <= 0)
        {
            return new() { Species = [], Unknown = "its fatty acids are not in the reference table", Basis = "unknown" };
        }

        if (hydroxystearic > listed / 2)
        {
            return Only(HydroxyFat, "hydrogenated castor oil taken as its main triacylglycerol");
        }

        var moles = chains.Values.Sum();
        (Chain Chain, double Fraction)[] overall = [.. chains.Select(p => (p.Key, p.Value / moles))];
        var fats = PositionalDistribution.Distribute(overall, MiddlePosition.Of(ingredient, overall));
        var printed = PublishedComposition.Find(ingredient);
        fats = printed is null ? fats : PublishedComposition.Fill(printed, fats);
        var unsaponifiable = Math.Clamp(UnsaponifiableShare(ingredient), 0, 0.5);
        var molarMass = fats.Sum(p => p.Value * p.Key.MolarMass);
        var perGram = (1 - unsaponifiable) / molarMass;
        var species = fats.Select(p => (PureSpecies.Of(p.Key), p.Value * perGram)).ToList();
        if (unsaponifiable > 0)
        {
            species.Add((Unsaponifiable, unsaponifiable / UnsaponifiableMolarMass));
        }

        return new()
        {
            Species = species,
            Basis = printed is null ? "triacylglycerols generated from the fatty acids" : $"triacylglycerols as printed ({printed.Label}), the rest generated from the fatty acids",
            Warnings = other / listed > 0.02 ? [$"{ingredient.CommonName()}: hydroxy, epoxy, ring or conjugated acids have no melting data; their fats count as liquid."] : [],
        };
    }

    private static double UnsaponifiableShare(Ingredient ingredient) =>
        (double)(StoredFigures.Find(ingredient, Property.UnsaponifiableMatter)?.Central() ?? 0) / 100;

    private static FattyAcidProfile? Profile(Ingredient ingredient, ProfilePart part)
    {
        FattyAcidProfile? found = null;
        foreach (var profile in ingredient.FattyAcidProfiles)
        {
            if (profile.Kind == ProfileKind.Sample && profile.Of == part && (found is null || profile.Used))
            {
                found = profile;
            }
        }

        return found;
    }

    private static IngredientSpecies Only(PureSpecies species, string basis) =>
        new() { Species = [(species, 1 / species.MolarMass)], Basis = basis };
}
