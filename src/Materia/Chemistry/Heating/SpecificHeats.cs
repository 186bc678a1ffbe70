using Materia.Catalogue;

namespace Materia.Chemistry.Heating;

/// <summary>
/// Specific heats by kind, at about 50 °C [J/(g.K)]. Those of fat, carbohydrate and water follow from the polynomials of Choi and Okos as a
/// handbook page prints them: fat 1.9842 + 1.4733e-3 t − 4.8008e-6 t², carbohydrate 1.5488 + 1.9625e-3 t − 5.9399e-6 t², water
/// 4.1762 − 9.0864e-5 t + 5.4731e-6 t².
/// </summary>
public static class SpecificHeats
{
    private const string Unit = "J/(g.K)";

    /// <summary>Melted or solid fats and oils.</summary>
    public static SourcedFigure Fat { get; } = Printed("specific heat of fats and oils", 2.05, 1.9, 2.2, "fat");

    /// <summary>Water and plant waters.</summary>
    public static SourcedFigure Water { get; } = Printed("specific heat of water", 4.18, 4.17, 4.2, "water, 0 to 150 °C");

    /// <summary>Starches and plant powders.</summary>
    public static SourcedFigure Carbohydrate { get; } = Printed("specific heat of starches and plant powders", 1.63, 1.5, 1.7, "carbohydrate");

    /// <summary>Waxes, fatty alcohols and acids.</summary>
    public static SourcedFigure Wax { get; } = SourcedFigure.Recalled("specific heat of waxes, fatty alcohols and acids", 2.2, 2.0, 2.5, Unit);

    /// <summary>Clays and other minerals.</summary>
    public static SourcedFigure Mineral { get; } = SourcedFigure.Recalled("specific heat of clays and minerals", 0.9, 0.8, 1.1, Unit);

    /// <summary>Essential oils and silicones.</summary>
    public static SourcedFigure Volatile { get; } = SourcedFigure.Recalled("specific heat of essential oils and silicones", 1.8, 1.5, 2.0, Unit);

    /// <summary>Glycols, glycerin, solvents and what dissolves in them.</summary>
    public static SourcedFigure Glycol { get; } = SourcedFigure.Recalled("specific heat of glycols and solutions in them", 2.5, 2.0, 4.2, Unit);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SourcedFigure> All { get; } = [Fat, Water, Carbohydrate, Wax, Mineral, Volatile, Glycol];

    /// <summary>The specific heat to take for an ingredient.</summary>
    public static SourcedFigure Of(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Kind switch
        {
            IngredientKind.Butter or IngredientKind.Oil or IngredientKind.Ester or IngredientKind.Hydrocarbon or IngredientKind.Antioxidant or IngredientKind.Emulsifier => Fat,
            IngredientKind.Wax or IngredientKind.FattyAlcohol or IngredientKind.FattyAcid or IngredientKind.Resin => Wax,
            IngredientKind.Clay or IngredientKind.Powder or IngredientKind.Colourant => Mineral,
            IngredientKind.Starch or IngredientKind.Thickener => Carbohydrate,
            IngredientKind.EssentialOil or IngredientKind.Silicone => Volatile,
            IngredientKind.Hydrosol => Water,
            IngredientKind.Solvent when string.Equals(ingredient.InciName(), "Aqua", StringComparison.OrdinalIgnoreCase) || string.Equals(ingredient.InciName(), "Water", StringComparison.OrdinalIgnoreCase) => Water,
            _ => Glycol,
        };
    }

    private static SourcedFigure Printed(string what, double value, double low, double high, string row) =>
        new(what, value, low, high, Unit, Evidence.Secondary, "choi-okos-1986-copy", $"table of Choi and Okos, row {row}; the range about it was recalled");
}
