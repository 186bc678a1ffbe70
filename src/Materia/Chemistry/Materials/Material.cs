using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>What follows from an ingredient's record alone, worked out once: the figures that blends are added up from.</summary>
internal sealed class Material
{
    private Material(Ingredient ingredient, Release release, bool fromCatalogue)
    {
        Ingredient = ingredient;
        IsLipid = Kinds.IsLipid(ingredient.Kind);
        BearsFattyAcids = Kinds.BearsFattyAcids(ingredient.Kind);
        IsPowder = Kinds.IsPowder(ingredient.Kind);
        Acids = AcidProfile.Find(ingredient, ProfilePart.Acids, release, out var fault);
        ProfileFault = fault;
        Alcohols = AcidProfile.Find(ingredient, ProfilePart.Alcohols, release, out fault);
        ProfileFault ??= fault;
        IsWaxEster = Acids is not null && Alcohols is not null && IsLipid;
        var range = AcidRange.Find(ingredient, release);
        Shares = Acids is null ? null : new AcidShares(Acids, range);
        UnsaponifiableFigure = StoredFigures.Find(ingredient, Property.UnsaponifiableMatter);
        Interval? unsaponifiable = UnsaponifiableFigure is null ? null : Interval.Of(UnsaponifiableFigure);
        Unsaponifiable = unsaponifiable ?? Interval.Exact(0);
        if (IsLipid)
        {
            Iodine = IodineOfMaterial.Of(ingredient, Acids, Alcohols, range, Unsaponifiable);
            Saponification = SaponificationOfMaterial.Of(ingredient, Acids, Alcohols, range, unsaponifiable);
            MeltingFigure = MeltingLimit.Of(ingredient)?.Stored;
            MeltedFrom = MeltingLimit.Of(ingredient)?.Temperature;
        }

        Density = DensityOfMaterial.Of(ingredient, Acids, IsWaxEster, MeltedFrom, Iodine, Saponification);
        if (IsLipid)
        {
            Viscosity = ViscosityOfMaterial.Of(ingredient, fromCatalogue, Acids, range, IsWaxEster, Density);
        }

        OilAbsorption = StoredFigures.Find(ingredient, Property.OilAbsorption);
        Tocopherols = StoredFigures.Find(ingredient, Property.TotalTocopherols);
        AcidMass = FattyAcidMass();
        AlcoholMass = IsWaxEster ? (Alcohols!.MeanMolarMass / EsterMass()) * Saponifiable() : Alcohols is null ? 0 : 1;
    }

    public Ingredient Ingredient { get; }

    public bool IsLipid { get; }

    public bool BearsFattyAcids { get; }

    public bool IsPowder { get; }

    /// <summary>True for a wax ester such as jojoba, whose acids and alcohols were both analysed.</summary>
    public bool IsWaxEster { get; }

    public AcidProfile? Acids { get; }

    public AcidProfile? Alcohols { get; }

    /// <summary>Why a stored profile cannot be used; <see langword="null"/> when it can or there is none.</summary>
    public string? ProfileFault { get; }

    /// <summary>The acids' shares with their ranges.</summary>
    public AcidShares? Shares { get; }

    public Figure? UnsaponifiableFigure { get; }

    /// <summary>Unsaponifiable matter [%], nought where it is not known.</summary>
    public Interval Unsaponifiable { get; }

    public Titration? Iodine { get; }

    public Titration? Saponification { get; }

    public LinearDensity? Density { get; }

    public Viscosity? Viscosity { get; }

    /// <summary>The temperature from which it is surely melted [Cel].</summary>
    public double? MeltedFrom { get; }

    public Figure? MeltingFigure { get; }

    /// <summary>True for a kind that is solid at room temperature and has no melting figure.</summary>
    public bool MeltingIsUnknown => MeltedFrom is null && Kinds.IsSolidLipid(Ingredient.Kind);

    public Figure? OilAbsorption { get; }

    public Figure? Tocopherols { get; }

    /// <summary>Fatty acids, free or bound, in one gram [g]; nought where they are not known.</summary>
    public double AcidMass { get; }

    /// <summary>Alcohols of wax esters, or free fatty alcohols, in one gram [g]; nought where they are not known.</summary>
    public double AlcoholMass { get; }

    /// <summary>Works out what follows from <paramref name="ingredient"/>.</summary>
    public static Material Of(Ingredient ingredient, Release release, bool fromCatalogue) => new(ingredient, release, fromCatalogue);

    private double Saponifiable() => 1 - (Unsaponifiable.Value / 100);

    private double EsterMass() => Acids!.MeanMolarMass + Alcohols!.MeanMolarMass - Rules.MolarMass.Water;

    private double FattyAcidMass()
    {
        if (Acids is null || !BearsFattyAcids)
        {
            return 0;
        }

        if (IsWaxEster)
        {
            return Acids.MeanMolarMass / EsterMass() * Saponifiable();
        }

        var bound = 3 * Acids.MeanMolarMass;
        return (Ingredient.Kind == IngredientKind.FattyAcid ? 1 : bound / (bound + Rules.MolarMass.GlycerolResidue)) * Saponifiable();
    }
}
