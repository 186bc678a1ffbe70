namespace Materia.Chemistry.Melting;

/// <summary>The parameters of every class.</summary>
public static class ClassTable
{
    /// <summary>
    /// Long-chain fats: beta melting points 2.0 K lower, mixing weight 0.30, crystallinity 0.86; set on three cocoa butters
    /// (Ghana, Ivory Coast, Malaysia), whose curves are recalled, with POS melting at 35.9 °C as printed.
    /// </summary>
    private static readonly ClassParameters LongChain = new(Polymorph.Beta, -2.0, 0.30, 0.86);

    /// <summary>Lauric fats: beta-prime, mixing weight 0.60; set on palm kernel and looked at on coconut.</summary>
    private static readonly ClassParameters LauricChain = new(Polymorph.BetaPrime, 0, 0.60, 1);

    /// <summary>Alcohols mix in their rotator crystals.</summary>
    private static readonly ClassParameters Alcohols = new(Polymorph.Beta, 0, 0.60, 1);

    /// <summary>Species that crystallise alone.</summary>
    private static readonly ClassParameters Separate = new(Polymorph.Beta, 0, 0, 1);

    /// <summary>Classes of the pseudo-components of natural waxes.</summary>
    private static readonly ClassParameters Waxes = new(Polymorph.Beta, 0, 0.30, 1);

    /// <summary>The n-alkanes of a wax: one ideal solid solution.</summary>
    private static readonly ClassParameters Alkanes = new(Polymorph.Beta, 0, 1, 1);

    /// <summary>The parameters of <paramref name="class"/> in the recommended model.</summary>
    public static ClassParameters Of(CrystalClass @class) => @class switch
    {
        CrystalClass.Lauric => LauricChain,
        CrystalClass.Alcohol => Alcohols,
        CrystalClass.Paraffin => Alkanes,
        CrystalClass.FreeAcid or CrystalClass.HydroxyFat => Separate,
        CrystalClass.WaxEster or CrystalClass.Alkane or CrystalClass.WaxAcid or CrystalClass.WaxHydroxyEster => Waxes,
        _ => LongChain,
    };

    /// <summary>How classes crystallise in <paramref name="model"/>: the recommended parameters, with the mixing weights that the model is about.</summary>
    public static Func<CrystalClass, ClassParameters> In(MeltingModel model) => model switch
    {
        MeltingModel.PureCrystals => static c => Of(c) with { MixingWeight = 0 },
        MeltingModel.IdealClasses => static c => Of(c) with { MixingWeight = 1 },
        _ => Of,
    };
}
