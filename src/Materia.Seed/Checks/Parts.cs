using System.Globalization;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Parts of mixtures: two at least, none twice, ingredients that exist, shares in order that can add up to the whole.</summary>
internal static class Parts
{
    /// <summary>Least sum of the usual shares, where all are given [%]. Makers round to whole per cents and leave out traces.</summary>
    public const decimal LeastSum = 97;

    /// <summary>Greatest sum of the usual shares, where all are given [%]: the same slack on the other side.</summary>
    public const decimal GreatestSum = 103;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var ids = seed.Ingredients.Select(i => i.Value.Id).Concat(seed.UnreadIngredients).ToHashSet(StringComparer.Ordinal);
        foreach (var (ingredient, place) in seed.Ingredients.Where(i => i.Value.Parts.Count > 0))
        {
            if (ingredient.Parts.Count == 1)
            {
                faults.Add(place.Item("parts", 0), "a single part makes no mixture; add the others, water included, or name it with kind inci");
            }

            CheckEach(ingredient, place, ids, faults);
            CheckSums(ingredient.Parts, place.Member("parts"), faults);
        }
    }

    private static void CheckEach(Ingredient ingredient, Place place, HashSet<string> ids, FaultList faults)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var linked = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (part, at) in Statements.Items(ingredient.Parts, place, "parts"))
        {
            var range = new RangeOrder(part.Low, part.Typical, part.High);
            if (!range.IsEmpty)
            {
                range.CheckPercent(at, faults);
            }

            if (!seen.Add(part.InciName))
            {
                faults.Add(at, $"part \"{part.InciName}\" stands twice; add the shares up or correct one name");
            }

            if (part.Ingredient is not { } id)
            {
                continue;
            }

            if (id == ingredient.Id)
            {
                faults.Add(at, $"{id} is named as a part of itself; name the part or leave \"ingredient\" out");
            }
            else if (!ids.Contains(id))
            {
                faults.Add(at, $"ingredient \"{id}\" does not exist; correct the id or leave \"ingredient\" out");
            }

            if (!linked.Add(id))
            {
                faults.Add(at, $"ingredient \"{id}\" is two parts; add the shares up or correct one id");
            }
        }
    }

    private static void CheckSums(IReadOnlyList<CompositePart> parts, Place at, FaultList faults)
    {
        if (parts.All(p => p.Typical is not null) && parts.Sum(p => p.Typical) is < LeastSum or > GreatestSum)
        {
            faults.Add(at, Text($"the usual shares of the parts add up to {parts.Sum(p => p.Typical)} %, not to {LeastSum} to {GreatestSum} %; correct one, or leave one that is not known out"));
        }

        if (parts.Sum(p => p.Low ?? 0) is > 100 and var lows)
        {
            faults.Add(at, Text($"the least shares of the parts add up to {lows} %, more than 100 %; they cannot all hold"));
        }

        if (parts.All(p => p.High is not null) && parts.Sum(p => p.High) is < 100 and var highs)
        {
            faults.Add(at, Text($"the greatest shares of the parts add up to {highs} %, less than 100 %; a part is missing or a share is too small"));
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
