using System.Globalization;
using System.Text.RegularExpressions;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Seed;
using Materia.Tests.Seed;

namespace Materia.Tests.Checks;

/// <summary>
/// The shipped limits and allergens against the figures of their instruments, row by row: each row is carried with the same figure, or
/// stands in left-out.csv with the reason. Figures are equal to the last digit; there is no tolerance.
/// </summary>
public sealed class RegulationTests
{
    private static readonly Lazy<CatalogueContent> Shipped = new(() => SeedReader.Read(RepositoryRoot.SeedData).Content.ShouldNotBeNull());

    private static IReadOnlyList<Limit> Limits => Shipped.Value.Limits;

    /// <summary>Annexes II, III and V of Regulation (EC) No 1223/2009, with the later act and the opinions that the same file holds.</summary>
    [Theory]
    [InlineData("eu-prohibited.csv", "eu-cosmetics-annex-ii", 77)]
    [InlineData("eu-restricted.csv", "eu-cosmetics-annex-iii", 160)]
    [InlineData("eu-preservatives.csv", "eu-cosmetics-annex-v", 66)]
    public void Limits_EveryRowOfTheAnnex_IsCarriedOrLeftOutWithAReason(string file, string source, int expected)
    {
        var rows = RegulationFiles.Rows(file);
        rows.Count.ShouldBe(expected);
        foreach (var row in rows.Where(r => !r.IsLeftOut))
        {
            var carried = Candidates(row, source).Where(l => file == "eu-prohibited.csv" || l.MaxPercent == row.Figure("max_percent")).ToList();
            carried.ShouldNotBeEmpty($"{row}: {row["annex_entry"]} is neither carried with {row.Fields.GetValueOrDefault("max_percent")} nor left out");
            foreach (var cas in row.CasNumbers().Where(c => !row.LeavesOut(c)))
            {
                carried.SelectMany(l => l.Members).ShouldContain(m => m.Cas == cas, $"{row}: {cas} counts towards nothing");
            }

            if (row["seen"] == "read")
            {
                carried.ShouldContain(l => l.Evidence == Evidence.Published, row.ToString());
            }
        }
    }

    /// <summary>81 entries of Annex III with the declaration clause, 170 substances.</summary>
    [Fact]
    public void Allergens_EveryRow_HasItsThresholdsDatesAndNumber()
    {
        var allergens = Shipped.Value.Allergens.ToDictionary(a => a.DeclarationName, StringComparer.Ordinal);
        var rows = RegulationFiles.Rows("eu-allergens.csv");
        rows.Count.ShouldBe(170);
        allergens.Count.ShouldBe(81);
        foreach (var row in rows)
        {
            var allergen = allergens[row["declaration_name"]];
            allergen.Locator.ShouldBe("entry " + row["annex_entry"]);
            allergen.LeaveOnThreshold.ShouldBe(row.Figure("leave_on_threshold_percent")!.Value, row.ToString());
            allergen.RinseOffThreshold.ShouldBe(row.Figure("rinse_off_threshold_percent")!.Value, row.ToString());
            (allergen.NewProductsUntil, allergen.OldStockUntil).ShouldBe(Dates(row), row.ToString());
            if (row["cas"] != "-" && !row.LeavesOut(row["cas"]))
            {
                allergen.Members.ShouldContain(m => m.Cas == row["cas"], row.ToString());
            }
        }
    }

    /// <summary>IFRA Standards up to the 51st Amendment, by the open extraction. Categories that no type of product has may be left out.</summary>
    [Fact]
    public void Limits_EveryFigureOfTheFragranceStandards_IsCarriedForCategoriesInUse()
    {
        var used = Shipped.Value.Uses.Select(u => u.IfraCategory).ToHashSet();
        var standards = Limits.Where(l => l.Authority == Authority.Ifra).ToLookup(l => Regex.Replace(l.Locator!, @"^standard |, page \d+$", ""));
        var rows = RegulationFiles.Rows("ifra-limits.csv");
        rows.Count.ShouldBe(1216);
        foreach (var row in rows.Where(r => !r.IsLeftOut))
        {
            var standard = standards[row["material"]].ToList();
            var bound = standard.Where(l => l.Scope.IfraCategories.Contains(row["category"])).ToList();
            if (row["limit_kind"] == "limit")
            {
                if (bound.Count > 0 || used.Contains(row["category"]))
                {
                    bound.ShouldHaveSingleItem().MaxPercent.ShouldBe(row.Figure("max_percent_finished_product"), row.ToString());
                }
            }
            else if (row["category"] == "all")
            {
                standard.ShouldContain(l => l.Scope.IfraCategories.Count == 0, row.ToString());
            }
            else
            {
                bound.ShouldBeEmpty($"{row}: {row["limit_kind"]}");
            }
        }
    }

    /// <summary>The same figures once more by oil and product, as another file gives them.</summary>
    [Fact]
    public void Limits_EveryRowOnSkin_AgreesWithWhatIsCarried()
    {
        var rows = RegulationFiles.Rows("dermal-limits.csv");
        rows.Count.ShouldBe(110);
        foreach (var row in rows.Where(r => !r.IsLeftOut))
        {
            var named = Limits.Where(l => l.Members.Any(m => row["inci"].Length > 0 && Starts(m.InciName, row["inci"]))).ToList();
            switch (row["kind"])
            {
                case "phototoxicity limit":
                    // Leave-on figures are carried; rinse-off rows say that there is none.
                    var bound = named.Where(l => l.RatioGroup == "phototoxic").ShouldHaveSingleItem();
                    bound.MaxPercent.ShouldBe(row.Figure("max_percent") ?? bound.MaxPercent, row.ToString());
                    bound.Scope.IfraCategories.ShouldNotContain("9");
                    break;
                case "IFRA limit, whole extract":
                    var category = row["product_scope"]["IFRA category ".Length..];
                    named.Where(l => l.Kind == LimitKind.Fragrance && l.Scope.IfraCategories.Contains(category))
                        .ShouldContain(l => l.MaxPercent == row.Figure("max_percent"), row.ToString());
                    break;
                case "limit through a constituent":
                    CheckConstituent(row);
                    break;
                default:
                    named.ShouldContain(l => l.MaxPercent == row.Figure("max_percent"), row.ToString());
                    break;
            }
        }
    }

    /// <summary>Every category that a type of product has is one of the list, and the product stays on or is washed off as the list says.</summary>
    [Fact]
    public void Uses_Category_IsOneOfTheFragranceStandards()
    {
        var categories = RegulationFiles.Rows("ifra-categories.csv").Where(r => r["category"] != "note").ToDictionary(r => r["category"], r => r["rinse_off_or_leave_on"]);
        foreach (var use in Shipped.Value.Uses)
        {
            // Masks and removers are washed off and yet stand in category 3, as the list says of it.
            var category = categories[use.IfraCategory.ShouldNotBeNull(use.Id)];
            (category.StartsWith("rinse-off", StringComparison.Ordinal) == (use.Exposure == Exposure.RinseOff) || use.IfraCategory == "3").ShouldBeTrue(use.Id);
        }
    }

    /// <summary>Dust, heat and words on powders: what concerns a share in a product is carried, all else is listed.</summary>
    [Fact]
    public void Limits_PowdersAndHeat_AreCarriedOrListed()
    {
        foreach (var row in RegulationFiles.Rows("clay-and-powder.csv").Where(r => !r.IsLeftOut))
        {
            var limit = Limits.Single(l => l.Id == (row["material"] == "zinc oxide" ? "eu-vi-30" : "eu-iii-59"));
            (limit.Conditions + limit.Warning).ShouldContain(row["material"] == "zinc oxide" ? row["value"] + " %" : "Keep powder away from children's nose and mouth");
        }
    }

    [Fact]
    public void LeftOut_EveryLine_NamesARowThatIsThereAndSaysWhy()
    {
        foreach (var left in RegulationFiles.LeftOut.SelectMany(l => l))
        {
            var row = RegulationFiles.Rows(left.File)[left.Line - 2];
            row.Fields.Values.ShouldContain(left.What, $"{left.File}:{left.Line}");
            left.Reason.Length.ShouldBeGreaterThan(20);
            if (left.Cas.Length > 0)
            {
                row.CasNumbers().ShouldContain(left.Cas);
            }
        }
    }

    /// <summary>Molar masses of the acids and salts: benzoic 122.12 and sodium benzoate 144.10, sorbic 112.13 and potassium sorbate 150.22, retinol 286.45 and retinyl palmitate 524.86 g/mol (worked examples 4, 5 and the extra one).</summary>
    [Theory]
    [InlineData("eu-v-1-leave-on", "532-32-1", 122.12, 144.10)]
    [InlineData("eu-v-4", "24634-61-5", 112.13, 150.22)]
    [InlineData("eu-iii-376-other", "79-81-2", 286.45, 524.86)]
    public void Factors_CountedAsAnotherSubstance_AreTheRatioOfMolarMassesToSixDecimals(string id, string cas, double counted, double weighed)
    {
        var member = Limits.Single(l => l.Id == id).Members.Single(m => m.Cas == cas);

        member.Factor.ShouldBe(decimal.Round((decimal)counted / (decimal)weighed, 6));
    }

    private static IEnumerable<Limit> Candidates(RegulationRow row, string source)
    {
        var entry = row["annex_entry"];
        return entry switch
        {
            "opinion" => Limits.Where(l => l.Authority == Authority.Opinion && l.Members.Any(m => row.CasNumbers().Contains(m.Cas!))),
            "(2026/78)" => Limits.Where(l => l.Source == "eu-2026-78-summaries" && l.Members.Any(m => row.CasNumbers().Contains(m.Cas!))),
            _ => Limits.Where(l => l.Source == source && Regex.IsMatch(l.Locator!, $@"\b{Regex.Escape(entry)}\b")),
        };
    }

    // The first list of 24 counts without a transition; the dates of the others stand in the row's own words.
    private static (DateOnly?, DateOnly?) Dates(RegulationRow row)
    {
        if (row["list_generation"] == "old24")
        {
            return (null, null);
        }

        var days = Regex.Matches(row["transition_dates"], @"until (\d{4}-\d\d-\d\d)").Select(m => DateOnly.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
        return (days[0], days[1]);
    }

    private static void CheckConstituent(RegulationRow row)
    {
        var constituent = row["basis"]["constituent ".Length..];
        var figures = Regex.Matches(row["max_percent"], @"([\d.]+) \((\w+)\)");
        foreach (Match figure in figures)
        {
            Limits.Where(l => l.Authority == Authority.Ifra && l.Substance == constituent && l.Scope.IfraCategories.Contains(figure.Groups[2].Value))
                .ShouldHaveSingleItem(row.ToString()).MaxPercent.ShouldBe(decimal.Parse(figure.Groups[1].Value, CultureInfo.InvariantCulture), row.ToString());
        }

        if (figures.Count == 0)
        {
            // Methyl salicylate: the law's figures stand in the row in words.
            Limits.Where(l => l.Substance == constituent && l.Authority == Authority.Eu).Select(l => l.MaxPercent).ShouldContain(0.06m, row.ToString());
        }
    }

    private static bool Starts(string? name, string start) => name is not null && name.StartsWith(start, StringComparison.OrdinalIgnoreCase);
}
