using Materia.Catalogue.Regulated;
using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Checks;

/// <summary>The figures, dates and references of limits.</summary>
internal static class Limits
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var uses = seed.Uses.Select(u => u.Value.Id).ToHashSet(StringComparer.Ordinal);
        var ingredients = seed.Ingredients.Select(i => i.Value.Id).Concat(seed.UnreadIngredients).ToHashSet(StringComparer.Ordinal);
        foreach (var (limit, place) in seed.Regulation.Limits.Rows)
        {
            CheckFigures(limit, place, faults);
            foreach (var use in limit.Scope.Uses.Concat(limit.Scope.ExceptUses).Where(u => seed.HasUses && !uses.Contains(u)))
            {
                faults.Add(place, $"use \"{use}\" is not in {UseTable.Path}; add a row or correct the key");
            }

            foreach (var id in limit.ExceptIngredients.Where(i => !ingredients.Contains(i)))
            {
                faults.Add(place, $"except_ingredients \"{id}\" does not exist; add the ingredient or correct the id");
            }

            Categories(limit.Scope.IfraCategories, "ifra_categories", place, faults);
        }

        foreach (var (use, place) in seed.Uses.Where(u => u.Value.IfraCategory is not null))
        {
            Categories([use.IfraCategory!], "ifra_category", place, faults);
        }
    }

    private static void CheckFigures(Limit limit, Place place, FaultList faults)
    {
        if (limit.MaxPercent is <= 0 or > 100)
        {
            faults.Add(place, $"max_percent {limit.MaxPercent} is not above 0 and at most 100; leave it out where the instrument gives none");
        }

        if (limit.WarningAbove is < 0 or > 100)
        {
            faults.Add(place, $"warning_above {limit.WarningAbove} is outside 0 to 100");
        }

        if (limit is { WarningAbove: not null, Warning: null })
        {
            faults.Add(place, "warning_above without warning; give the words or leave the share out");
        }

        if (limit is { MaxPercent: null, Below: true } or { MaxPercent: null, RatioGroup: not null })
        {
            faults.Add(place, "below and ratio_group need max_percent; give the share or leave them out");
        }

        if (limit.From is { } from && limit.OldStockUntil is { } until && until < from)
        {
            faults.Add(place, "old_stock_until is before from; look the dates up and correct them");
        }
    }

    private static void Categories(IReadOnlyList<string> categories, string column, Place place, FaultList faults)
    {
        foreach (var category in categories.Where(c => !FragranceCategory.All.Contains(c, StringComparer.Ordinal)))
        {
            faults.Add(place, $"{column} \"{category}\" is no category of the fragrance standards; write one of {string.Join(", ", FragranceCategory.All)}");
        }
    }
}
