using Materia.Seed;
using static Materia.Tests.Seed.SeedRegulationTexts;

namespace Materia.Tests.Seed;

/// <summary>The tables of allergens and of what counts towards them, and the new columns of product types.</summary>
public sealed class AllergenCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Read_Allergen_HoldsWhatItsRowsSay()
    {
        var allergen = SeedReader.Read(folder.Root).Content.ShouldNotBeNull().Allergens[1];

        allergen.DeclarationName.ShouldBe("Example Oil/Extract");
        allergen.NaturalExtract.ShouldBeTrue();
        allergen.LeaveOnThreshold.ShouldBe(0.001m);
        allergen.RinseOffThreshold.ShouldBe(0.01m);
        allergen.NewProductsUntil.ShouldBe(new DateOnly(2026, 7, 31));
        allergen.OldStockUntil.ShouldBe(new DateOnly(2028, 7, 31));
        allergen.Members.ShouldHaveSingleItem().Ingredient.ShouldBe("example-oil");
    }

    [Theory]
    [InlineData(Allergens, "Linalool,,0.001", "Linalool,,101", "linalool", "leave_on_threshold 101 is outside 0 to 100")]
    [InlineData(Allergens, "0.01,,,published", "-0.01,,,published", "linalool", "rinse_off_threshold -0.01 is outside 0 to 100")]
    [InlineData(Allergens, "0.01,,,published", ",,,published", "linalool", "rinse_off_threshold is empty")]
    [InlineData(Allergens, "2026-07-31", "", "example-oil", "only one of new_products_until and old_stock_until is given")]
    [InlineData(Allergens, "2028-07-31", "2026-07-30", "example-oil", "old_stock_until is before new_products_until")]
    [InlineData(Allergens, "2028-07-31", "31/07/2028", "example-oil", "old_stock_until \"31/07/2028\" is no day")]
    [InlineData(Allergens, "Example Oil/Extract", "Linalool", "example-oil", "declaration_name \"Linalool\" stands in line 2 too")]
    [InlineData(Allergens, "example-oil,Example", "linalool,Example", "linalool,Example", "id \"linalool\" stands in line 2 too")]
    [InlineData(Allergens, "published,example-book,p. 32", "published,example-book,", "example-oil", "published without a locator")]
    [InlineData(AllergenMembers, "linalool,linalool", "linalol,linalool", "linalol,", "allergen \"linalol\" is not in tables/allergens.csv")]
    [InlineData(AllergenMembers, "78-70-6", "78-70-5", "78-70-5", "CAS number \"78-70-5\" is wrong")]
    [InlineData(AllergenMembers, "Oil,example-oil", "Oil,example-fat", "example-oil", "ingredient \"example-fat\" does not exist")]
    [InlineData(SeedTexts.Uses, "lips,1,", "lips,13,", "lip-balm", "ifra_category \"13\" is no category of the fragrance standards")]
    [InlineData(SeedTexts.Uses, "Keep it out of the eyes.", "Keep it out of the eyes", "hair-oil", "does not end with a full stop")]
    public void Read_WrongRow_IsReportedAtItsLine(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == file && f.Line == folder.Line(file, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_AllergenWithoutMember_IsReportedAtItsRow()
    {
        folder.Edit(AllergenMembers, "linalool,linalool,78-70-6,Linalool,,\n", "");

        folder.ShouldReport(Allergens, "linalool", "nothing counts towards linalool");
    }
}
