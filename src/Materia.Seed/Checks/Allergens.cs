using Materia.Catalogue.Regulated;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The thresholds and dates of allergens.</summary>
internal static class Allergens
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var names = new Dictionary<string, Place>(StringComparer.Ordinal);
        foreach (var (allergen, place) in seed.Regulation.Allergens.Rows)
        {
            Threshold(allergen.LeaveOnThreshold, "leave_on_threshold", place, faults);
            Threshold(allergen.RinseOffThreshold, "rinse_off_threshold", place, faults);
            CheckDates(allergen, place, faults);
            if (!names.TryAdd(allergen.DeclarationName, place))
            {
                faults.Add(place, $"declaration_name \"{allergen.DeclarationName}\" stands in line {names[allergen.DeclarationName].Line} too; one name is one allergen");
            }
        }
    }

    private static void Threshold(decimal percent, string column, Place place, FaultList faults)
    {
        if (percent is < 0 or > 100)
        {
            faults.Add(place, $"{column} {percent} is outside 0 to 100");
        }
    }

    private static void CheckDates(Allergen allergen, Place place, FaultList faults)
    {
        if ((allergen.NewProductsUntil is null) != (allergen.OldStockUntil is null))
        {
            faults.Add(place, "only one of new_products_until and old_stock_until is given; give both, or neither for an allergen of the first list");
        }
        else if (allergen.OldStockUntil < allergen.NewProductsUntil)
        {
            faults.Add(place, "old_stock_until is before new_products_until; look the dates up and correct them");
        }
    }
}
