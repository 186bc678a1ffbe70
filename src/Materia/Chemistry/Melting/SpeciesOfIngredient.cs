using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Chemistry.Melting;

/// <summary>Turns what the catalogue says of an ingredient into the species that melt.</summary>
public static class SpeciesOfIngredient
{
    /// <summary>Molar mass given to volatile liquids [g/mol]; amounts are small.</summary>
    private const double VolatileMolarMass = 150;

    /// <summary>An ester, alcohol or hydrocarbon whose melting figures all lie below this counts as liquid [Cel].</summary>
    private const decimal LiquidBelow = 15;

    private static readonly PureSpecies Volatile = PureSpecies.Liquid("essential oil", VolatileMolarMass);
    private static readonly PureSpecies WaxEsterOil = PureSpecies.Liquid("liquid wax esters", 606);
    private static readonly PureSpecies LiquidEmollient = PureSpecies.Liquid("liquid emollient", 400);

    /// <summary>The species of <paramref name="ingredient"/>, with its fatty acids looked up in <paramref name="release"/>.</summary>
    public static IngredientSpecies Of(Ingredient ingredient, Release release) => ingredient.Kind switch
    {
        _ when Kinds.IsPowder(ingredient.Kind) => new() { Species = [], IsFiller = true, Basis = "filler" },
        IngredientKind.EssentialOil => Only(Volatile, "counted as liquid"),
        IngredientKind.Wax when NaturalWaxes.Of(ingredient) is { } wax => wax,
        IngredientKind.Wax or IngredientKind.Hydrocarbon when ParaffinWax.Of(ingredient) is { } wax => wax,
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
            (IngredientKind.Butter or IngredientKind.Oil or IngredientKind.Wax or IngredientKind.Ester, not null, null) => FatSpecies.Of(ingredient, acids, release),
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

    /// <summary>The sample that computations use; <see langword="null"/> when there is none.</summary>
    public static FattyAcidProfile? Profile(Ingredient ingredient, ProfilePart part)
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
