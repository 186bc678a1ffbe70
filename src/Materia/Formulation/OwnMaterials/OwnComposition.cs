using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.OwnMaterials;

/// <summary>Turns the maker's fatty acids and constituents into the catalogue's.</summary>
internal static class OwnComposition
{
    /// <summary>Between these a profile is taken as a whole analysis [%]; the seed data is held to the same.</summary>
    private const decimal LeastSum = 97m;
    private const decimal GreatestSum = 100.5m;

    /// <summary>The CAS number of water.</summary>
    private const string WaterCas = "7732-18-5";

    /// <summary>Checks the fatty acids and gives them as one sample; nothing when there are none.</summary>
    public static IReadOnlyList<FattyAcidProfile> Profiles(IReadOnlyList<OwnFattyAcid> acids, string pointer, Release release, FaultList faults)
    {
        if (acids.Count == 0)
        {
            return [];
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < acids.Count; i++)
        {
            CheckAcid(acids[i], $"{pointer}/{i}", seen, release, faults);
        }

        if (acids.All(a => a.Percent is >= 0 and <= 100) && acids.Sum(a => a.Percent) is var sum and (< LeastSum or > GreatestSum))
        {
            faults.Add(pointer, $"The fatty acids add up to {Fault.Text(sum.Value)} %; an analysis adds up to {Fault.Text(LeastSum)} to {Fault.Text(GreatestSum)} %. Give the acids that are missing, or correct the shares.");
        }

        return
        [
            new FattyAcidProfile
            {
                Label = "analysis that came with the formula",
                Kind = ProfileKind.Sample,
                Shares = [.. acids.Select(a => new FattyAcidShare
                {
                    Acid = a.Acid ?? string.Empty,
                    Low = a.Low,
                    Typical = a.Percent,
                    High = a.High,
                    Evidence = OwnIngredient.Grade,
                    Source = OwnIngredient.Source,
                })],
            },
        ];
    }

    /// <summary>Checks the constituents and gives them with the water, where there is any.</summary>
    public static IReadOnlyList<Constituent> Constituents(OwnMaterial own, string pointer, FaultList faults)
    {
        faults.Within($"{pointer}/water", own.Water, 0, 100, "Water [%]");
        List<Constituent> created = [];
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        decimal sum = own.Water is >= 0 and <= 100 ? own.Water.Value : 0;
        for (var i = 0; i < own.Constituents.Count; i++)
        {
            var constituent = own.Constituents[i];
            var at = $"{pointer}/constituents/{i}";
            var cas = CheckSubstance(constituent.Substance, $"{at}/substance", seen, faults);
            if (constituent is { Percent: null, Low: null, High: null })
            {
                faults.Add($"{at}/percent", "Give the share of this constituent as percent, or as low and high.");
            }

            CheckShares(at, constituent.Low, constituent.Percent, constituent.High, faults);
            sum += constituent.Percent is >= 0 and <= 100 ? constituent.Percent.Value : 0;
            created.Add(new Constituent
            {
                Substance = constituent.Substance ?? string.Empty,
                Cas = cas,
                Low = constituent.Low,
                Typical = constituent.Percent,
                High = constituent.High,
                Evidence = OwnIngredient.Grade,
                Source = OwnIngredient.Source,
            });
        }

        if (sum > GreatestSum)
        {
            faults.Add($"{pointer}/constituents", $"Constituents and water add up to {Fault.Text(sum)} %, which is more than the whole. Correct the shares.");
        }

        if (own.Water is > 0)
        {
            created.Add(new Constituent { Substance = "water", Cas = WaterCas, Typical = own.Water, Evidence = OwnIngredient.Grade, Source = OwnIngredient.Source });
            if (seen.Contains("water") || seen.Contains(WaterCas))
            {
                faults.Add($"{pointer}/water", "Water stands among the constituents too; give it once.");
            }
        }

        return created;
    }

    /// <summary>Adds a fault when the three are not in rising order.</summary>
    public static void CheckOrder(string pointer, decimal? low, decimal? typical, decimal? high, FaultList faults)
    {
        if (low > high || low > typical || typical > high)
        {
            faults.Add(pointer, "The values must rise: low, then the value itself, then high. Put them in order.");
        }
    }

    private static void CheckAcid(OwnFattyAcid acid, string pointer, HashSet<string> seen, Release release, FaultList faults)
    {
        if (string.IsNullOrWhiteSpace(acid.Acid))
        {
            faults.Add($"{pointer}/acid", "Name the fatty acid by its symbol, such as \"18:1n-9\".");
        }
        else if (release.FindFattyAcid(acid.Acid) is not { Alcohol: false })
        {
            faults.Add($"{pointer}/acid", $"\"{Fault.Shorten(acid.Acid)}\" is not a fatty acid of the table. Use a symbol of the table, such as \"18:1n-9\"; \"18:1\" is the total without a position.");
        }
        else if (!seen.Add(acid.Acid))
        {
            faults.Add($"{pointer}/acid", $"\"{acid.Acid}\" is given twice; give one share for it.");
        }

        if (acid.Percent is null)
        {
            faults.Add($"{pointer}/percent", "Give the share of this fatty acid; low and high may stand beside it.");
        }

        CheckShares(pointer, acid.Low, acid.Percent, acid.High, faults);
    }

    private static void CheckShares(string pointer, decimal? low, decimal? percent, decimal? high, FaultList faults)
    {
        faults.Within($"{pointer}/low", low, 0, 100, "A share [%]");
        faults.Within($"{pointer}/percent", percent, 0, 100, "A share [%]");
        faults.Within($"{pointer}/high", high, 0, 100, "A share [%]");
        CheckOrder(pointer, low, percent, high, faults);
    }

    private static string? CheckSubstance(string? substance, string pointer, HashSet<string> seen, FaultList faults)
    {
        faults.Short(pointer, substance);
        if (string.IsNullOrWhiteSpace(substance))
        {
            faults.Add(pointer, "Name the substance, or give its CAS number with hyphens.");
            return null;
        }

        if (!seen.Add(substance))
        {
            faults.Add(pointer, $"\"{Fault.Shorten(substance)}\" is given twice; give one share for it.");
        }

        if (!substance.All(c => char.IsAsciiDigit(c) || c == '-'))
        {
            return null;
        }

        if (!CasNumber.IsValid(substance))
        {
            faults.Add(pointer, $"\"{Fault.Shorten(substance)}\" is not a CAS number: its form or its check digit is wrong. Compare it with the certificate.");
        }

        return substance;
    }
}
