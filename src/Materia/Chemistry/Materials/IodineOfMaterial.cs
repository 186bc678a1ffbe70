using Materia.Catalogue;
using Materia.Chemistry.Rules;

namespace Materia.Chemistry.Materials;

/// <summary>The iodine value of one ingredient: from its fatty acids where that is valid, else measured, else nought by nature, else unknown.</summary>
internal static class IodineOfMaterial
{
    /// <summary>The error of the computed value [g/(100.g)]: the note beside the method says on what it was measured.</summary>
    public const double ModelError = 5;

    /// <summary>The share of an odd acid above which it changes the titration noticeably [%].</summary>
    private const double Noticeable = 1;

    public static Titration? Of(Ingredient ingredient, AcidProfile? acids, AcidProfile? alcohols, AcidRange? range, Interval unsaponifiable)
    {
        var stored = StoredFigures.Find(ingredient, Property.IodineValue);
        var computed = acids is null || acids.Conjugated > Noticeable ? null : Compute(ingredient.Kind, acids, alcohols, range, unsaponifiable, stored);
        if (computed is not null && ingredient.Kind != IngredientKind.Wax)
        {
            return computed;
        }

        if (Kinds.IsKnownSaturated(ingredient))
        {
            return new Titration(new Interval(0, 0, stored is null ? 0 : (double)stored.Greatest()), TitrationBasis.Nature, stored);
        }

        if (ingredient.Kind == IngredientKind.FattyAlcohol && alcohols is not null)
        {
            return new Titration(Spread(100 * IodineFactor.OfSubstance(alcohols.MeanMolarMass, alcohols.MeanDoubleBonds), stored), TitrationBasis.Composition);
        }

        var note = acids?.Conjugated > Noticeable
            ? "conjugated double bonds do not take up iodine fully, so only a measured iodine value is used"
            : null;
        return stored is null ? computed : new Titration(Interval.Of(stored, ModelError), TitrationBasis.Measured, stored, note);
    }

    private static Titration? Compute(IngredientKind kind, AcidProfile acids, AcidProfile? alcohols, AcidRange? range, Interval unsaponifiable, Figure? stored)
    {
        if (alcohols is not null && kind is IngredientKind.Oil or IngredientKind.Wax or IngredientKind.Ester)
        {
            return new Titration(Spread(OfWaxEster(acids, alcohols), stored), TitrationBasis.Composition);
        }

        return kind switch
        {
            IngredientKind.FattyAcid => new Titration(Spread(Sum(acids, OfFree), range?.Bound(OfFree), stored, unsaponifiable), TitrationBasis.Composition),
            IngredientKind.Oil or IngredientKind.Butter =>
                new Titration(Spread(Sum(acids, OfBound), range?.Bound(OfBound), stored, unsaponifiable), TitrationBasis.Composition, null, Caveat(acids)),
            _ => null,
        };
    }

    private static double OfBound(FattyAcid acid) => IodineFactor.OfTriglyceride((double)acid.MolarMass, acid.DoubleBonds);

    private static double OfFree(FattyAcid acid) => IodineFactor.OfSubstance((double)acid.MolarMass, acid.DoubleBonds);

    private static double OfWaxEster(AcidProfile acids, AcidProfile alcohols) => 100 * IodineFactor.OfSubstance(
        acids.MeanMolarMass + alcohols.MeanMolarMass - MolarMass.Water, acids.MeanDoubleBonds + alcohols.MeanDoubleBonds);

    private static double Sum(AcidProfile acids, Func<FattyAcid, double> factor)
    {
        double sum = 0;
        for (var i = 0; i < acids.Acids.Length; i++)
        {
            sum += 100 * acids.Shares[i] * factor(acids.Acids[i]);
        }

        return sum;
    }

    private static Interval Spread(double value, Figure? stored)
    {
        var spread = new Interval(value, Math.Max(0, value - ModelError), value + ModelError);
        return stored is null ? spread : spread.Reaching((double)stored.Least(), (double)stored.Greatest());
    }

    /// <summary>
    /// The unsaponifiable part takes up an unknown amount of iodine of its own: the lower end counts it as none, the upper end as much as
    /// the fat's.
    /// </summary>
    private static Interval Spread(double fat, (double Low, double High)? range, Figure? stored, Interval unsaponifiable)
    {
        var value = fat * (1 - (unsaponifiable.Value / 100));
        var low = Math.Min(fat, range?.Low ?? fat) * (1 - (unsaponifiable.High / 100));
        var high = Math.Max(fat, range?.High ?? fat);
        var spread = new Interval(value, Math.Max(0, low - ModelError), high + ModelError);
        return range is null && stored is not null ? spread.Reaching((double)(stored.Low ?? stored.Typical ?? 0), (double)stored.Greatest()) : spread;
    }

    private static string? Caveat(AcidProfile acids)
    {
        if (acids.HydroxyFraction * 100 > Noticeable)
        {
            return "hydroxy acids react beyond their double bonds; measured iodine values of castor-like oils lie some 3 to 8 higher than the computed one";
        }

        return acids.Epoxy > Noticeable || acids.Ring > Noticeable
            ? "epoxy and cyclopropenoid acids react in ways that counting double bonds does not cover"
            : null;
    }
}
