using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Materials;

/// <summary>The saponification value of one ingredient: from its fatty acids where that is valid, else measured, else nought by nature, else unknown.</summary>
internal static class SaponificationOfMaterial
{
    /// <summary>The error of the computed value where the unsaponifiable matter is known [mg/g].</summary>
    public const double ModelError = 2;

    /// <summary>The error of the computed value where it is not known [mg/g].</summary>
    public const double WiderModelError = 4;

    public static Titration? Of(Ingredient ingredient, AcidProfile? acids, AcidProfile? alcohols, AcidRange? range, Interval? unsaponifiable)
    {
        var stored = StoredFigures.Find(ingredient, Property.SaponificationValue);
        var computed = acids is null ? null : Compute(ingredient.Kind, acids, alcohols, range, unsaponifiable, stored);
        if (computed is not null && ingredient.Kind != IngredientKind.Wax)
        {
            return computed;
        }

        if (ingredient.Kind is IngredientKind.FattyAlcohol or IngredientKind.Hydrocarbon || Kinds.IsKnownSaturated(ingredient))
        {
            var limit = stored ?? StoredFigures.Find(ingredient, Property.AcidValue);
            return new Titration(new Interval(0, 0, limit is null ? 0 : (double)limit.Greatest()), TitrationBasis.Nature, limit);
        }

        return Measured(ingredient, stored) ?? computed;
    }

    private static Titration? Compute(IngredientKind kind, AcidProfile acids, AcidProfile? alcohols, AcidRange? range, Interval? unsaponifiable, Figure? stored)
    {
        if (alcohols is not null && kind is IngredientKind.Oil or IngredientKind.Wax or IngredientKind.Ester)
        {
            return Spread(SaponificationEquivalent.OfSubstance(acids.MeanMolarMass + alcohols.MeanMolarMass - MolarMass.Water), null, unsaponifiable, stored);
        }

        return kind switch
        {
            IngredientKind.FattyAcid => Spread(SaponificationEquivalent.OfSubstance(acids.MeanMolarMass), Bound(range, m => SaponificationEquivalent.OfSubstance(m)), unsaponifiable, stored),
            IngredientKind.Oil or IngredientKind.Butter => Spread(SaponificationEquivalent.OfTriglyceride(acids.MeanMolarMass), Bound(range, SaponificationEquivalent.OfTriglyceride), unsaponifiable, stored),
            _ => null,
        };
    }

    // The value falls as the mean molar mass rises, so the bounds change places.
    private static (double Low, double High)? Bound(AcidRange? range, Func<double, double> equivalent) =>
        range?.BoundMean(a => (double)a.MolarMass) is var (lightest, heaviest) ? (equivalent(heaviest), equivalent(lightest)) : null;

    private static Titration Spread(double fat, (double Low, double High)? range, Interval? unsaponifiable, Figure? stored)
    {
        var error = unsaponifiable is null ? WiderModelError : ModelError;
        var rest = unsaponifiable ?? Interval.Exact(0);
        var low = Math.Min(fat, range?.Low ?? fat) * (1 - (rest.High / 100));
        var high = Math.Max(fat, range?.High ?? fat) * (1 - (rest.Low / 100));
        var spread = new Interval(fat * (1 - (rest.Value / 100)), low - error, high + error);
        if (range is null && stored is not null)
        {
            spread = spread.Reaching((double)stored.Least(), (double)stored.Greatest());
        }

        return new Titration(spread, TitrationBasis.Composition);
    }

    /// <summary>The stored value; for free acids the acid value, which is the same; else acid and ester value together, which are it by definition.</summary>
    private static Titration? Measured(Ingredient ingredient, Figure? stored)
    {
        if (stored is not null)
        {
            return new Titration(Interval.Of(stored, WiderModelError), TitrationBasis.Measured, stored);
        }

        if (StoredFigures.Find(ingredient, Property.AcidValue) is not { } acid)
        {
            return null;
        }

        var acidValue = Interval.Of(acid, WiderModelError);
        if (ingredient.Kind == IngredientKind.FattyAcid)
        {
            return new Titration(acidValue, TitrationBasis.Measured, acid, "its acid value is taken for the saponification value, as it has no ester");
        }

        if (StoredFigures.Find(ingredient, Property.EsterValue) is not { } ester)
        {
            return null;
        }

        var esterValue = Interval.Of(ester);
        return new Titration(
            new Interval(acidValue.Value + esterValue.Value, acidValue.Low + esterValue.Low, acidValue.High + esterValue.High),
            TitrationBasis.Measured,
            ester,
            "its acid and ester value are added up");
    }
}
