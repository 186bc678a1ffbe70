using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>What the kind of an ingredient says of its chemistry.</summary>
internal static class Kinds
{
    /// <summary>
    /// INCI names of fatty alcohols and hydrocarbons without a double bond: their iodine value is nought by their formula. Squalene and
    /// oleyl alcohol are the counter-examples that keep this from being a rule for the whole kind.
    /// </summary>
    private static readonly FrozenSet<string> Saturated = new[]
    {
        "Cetyl Alcohol", "Stearyl Alcohol", "Cetearyl Alcohol", "Behenyl Alcohol", "Myristyl Alcohol", "Lauryl Alcohol", "Arachidyl Alcohol",
        "Isostearyl Alcohol", "Octyldodecanol",
        "Squalane", "Paraffin", "Paraffinum Liquidum", "Mineral Oil", "Petrolatum", "Cera Microcristallina", "Microcrystalline Wax",
        "Ozokerite", "Ceresin", "Isododecane", "Isohexadecane", "C13-15 Alkane", "Hydrogenated Polyisobutene", "Polyethylene",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>True for what makes up the lipid phase: everything fat-soluble but essential oils.</summary>
    public static bool IsLipid(IngredientKind kind) => kind is IngredientKind.Butter or IngredientKind.Oil or IngredientKind.Wax
        or IngredientKind.FattyAlcohol or IngredientKind.FattyAcid or IngredientKind.Ester or IngredientKind.Hydrocarbon;

    /// <summary>True for lipids that contain fatty acids, free or bound.</summary>
    public static bool BearsFattyAcids(IngredientKind kind) =>
        IsLipid(kind) && kind is not (IngredientKind.FattyAlcohol or IngredientKind.Hydrocarbon);

    /// <summary>True for solids that stay solid: clays, powders and starches.</summary>
    public static bool IsPowder(IngredientKind kind) => kind is IngredientKind.Clay or IngredientKind.Powder or IngredientKind.Starch;

    /// <summary>True for lipids that are solid at room temperature by definition of their kind.</summary>
    public static bool IsSolidLipid(IngredientKind kind) =>
        kind is IngredientKind.Butter or IngredientKind.Wax or IngredientKind.FattyAlcohol or IngredientKind.FattyAcid;

    /// <summary>True when the formula of the substance has no double bond.</summary>
    public static bool IsKnownSaturated(Ingredient ingredient) => ingredient.InciName() is { } inci && Saturated.Contains(inci);
}
