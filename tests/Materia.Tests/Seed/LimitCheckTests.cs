using Materia.Seed;
using static Materia.Tests.Seed.SeedRegulationTexts;

namespace Materia.Tests.Seed;

/// <summary>The tables of limits and of what counts towards them.</summary>
public sealed class LimitCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Read_Limit_HoldsWhatItsRowsSay()
    {
        var limit = SeedReader.Read(folder.Root).Content.ShouldNotBeNull().Limits[0];

        limit.Id.ShouldBe("eu-lips");
        limit.Scope.Sites.ShouldBe([Materia.Catalogue.BodySite.Lips, Materia.Catalogue.BodySite.Face]);
        limit.MaxPercent.ShouldBe(0.50m);
        limit.Below.ShouldBeTrue();
        limit.WarningAbove.ShouldBe(0.1m);
        limit.From.ShouldBe(new DateOnly(2025, 11, 1));
        limit.OldStockUntil.ShouldBe(new DateOnly(2027, 4, 30));
        limit.Members.Select(m => (m.Name, m.Cas, m.InciName, m.Factor)).ShouldBe([("linalool", "78-70-6", "Linalool", 1m), ("linalyl acetate", "115-95-7", null, 0.785m)]);
    }

    [Theory]
    [InlineData("eu-lips,Linalool,eu", "eu-lips,Linalool,un", "authority \"un\" is unknown; write one of eu, gb, us, ifra, opinion")]
    [InlineData("eu,restricted,,lips", "eu,limited,,lips", "kind \"limited\" is unknown")]
    [InlineData("lips;face", "lips;ears", "sites \"ears\" is unknown; write one of hair, face, lips")]
    [InlineData("lips;face", "lips;", "sites \"lips;\" holds an empty item or a blank beside a semicolon")]
    [InlineData("lips;face", "lips; face", "a blank beside a semicolon")]
    [InlineData("lips;face", "lips;lips", "names something twice")]
    [InlineData("lips;face,,,,Lip products", "lips;face,,,,", "scope_text is empty")]
    [InlineData("0.50,true", "0.5 %,true", "max_percent \"0.5 %\" is no number")]
    [InlineData("2025-11-01", "1 November 2025", "from \"1 November 2025\" is no day; write it as 2026-07-31")]
    [InlineData("2025-11-01", "2025-11-31", "from \"2025-11-31\" is no day")]
    public void Read_RowOutOfForm_IsReportedAtItsLine(string old, string replacement, string gist)
    {
        folder.Edit(Limits, old, replacement);

        // Its members name a row that could not be read, which is no fault of theirs.
        folder.ShouldReport(Limits, "eu-lips", gist);
    }

    [Theory]
    [InlineData("0.50,true", "0,true", "eu-lips", "max_percent 0 is not above 0 and at most 100")]
    [InlineData("0.50,true", "100.01,true", "eu-lips", "max_percent 100.01 is not above 0 and at most 100")]
    [InlineData("0.50,true", ",true", "eu-lips", "below and ratio_group need max_percent")]
    [InlineData("0.4,,,light", ",,,light", "ifra-hair", "below and ratio_group need max_percent")]
    [InlineData("linalool,0.1,2025", "linalool,101,2025", "eu-lips", "warning_above 101 is outside 0 to 100")]
    [InlineData("Contains linalool,", ",", "eu-lips", "warning_above without warning")]
    [InlineData("2027-04-30", "2025-10-31", "eu-lips", "old_stock_until is before from")]
    [InlineData(",,lip-balm,,Other", ",,lip-gloss,,Other", "eu-other", "use \"lip-gloss\" is not in tables/uses.csv")]
    [InlineData("light,example-butter", "light,example-fat", "ifra-hair", "except_ingredients \"example-fat\" does not exist")]
    [InlineData("7A;7B", "7C;7B", "ifra-hair", "ifra_categories \"7C\" is no category of the fragrance standards")]
    [InlineData("7A;7B", "7A", "ifra-hair", "ifra-hair binds no type of product")]
    [InlineData("Not for children.", "Not for children", "eu-lips", "does not end with a full stop")]
    [InlineData("published,example-book,p. 30", "published,other-book,p. 30", "eu-lips", "source \"other-book\" does not exist")]
    [InlineData("published,example-book,p. 30", "published,example-book,", "eu-lips", "published without a locator")]
    [InlineData("eu-ban,", "eu-Ban,", "eu-Ban", "not in kebab case")]
    public void Read_RowThatCannotBe_IsReportedAtItsLine(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Limits, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == Limits && f.Line == folder.Line(Limits, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_TwoSharesForOneProduct_NamesBothAndTheProduct()
    {
        folder.Edit(Limits, "leave-on,,,lip-balm,,Other", "leave-on,,,,,Other");

        folder.ShouldReport(Limits, "eu-other", "eu-other binds lip-balm and so does eu-lips in line 2; part their scopes");
    }

    [Theory]
    [InlineData("Other products,1.0,", "Other products,,")]
    [InlineData("eu-other,Linalool,eu", "eu-other,Linalool,opinion")]
    [InlineData("eu,restricted,leave-on", "eu,preservative,leave-on")]
    [InlineData("eu-other,Linalool,eu", "eu-other,Linalool and its esters,eu")]
    public void Read_TwoRowsForOneProductOfDifferentSort_AreNoFault(string old, string replacement)
    {
        folder.Edit(Limits, "leave-on,,,lip-balm,,Other", "leave-on,,,,,Other");
        folder.Edit(Limits, old, replacement);

        SeedReader.Read(folder.Root).Faults.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("eu-ban,camphor", "eu-bann,camphor", "eu-bann", "limit \"eu-bann\" is not in tables/limits.csv")]
    [InlineData("76-22-2", "76-22-3", "eu-ban", "CAS number \"76-22-3\" is wrong in form or check digit")]
    [InlineData("76-22-2", "", "eu-ban", "\"camphor\" has no identity; give cas, inci_name or ingredient")]
    [InlineData("example-oil", "example-fat", "ifra-hair", "ingredient \"example-fat\" does not exist")]
    [InlineData("0.785", "0", "115-95-7", "factor is not above 0")]
    [InlineData("115-95-7,,,0.785", "78-70-6,Linalool,,", "linalyl", "\"linalyl acetate\" stands twice in eu-lips")]
    [InlineData("0.785", "half", "115-95-7", "factor \"half\" is no number")]
    public void Read_WrongMember_IsReportedAtItsLine(string old, string replacement, string mark, string gist)
    {
        folder.Edit(LimitMembers, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == LimitMembers && f.Line == folder.Line(LimitMembers, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_LimitWithoutMember_IsReportedAtItsRow()
    {
        folder.Edit(LimitMembers, "eu-ban,camphor,76-22-2,,,\n", "");

        folder.ShouldReport(Limits, "eu-ban", "nothing counts towards eu-ban");
    }

    [Fact]
    public void Read_MemberThatCouldNotBeRead_IsNotCalledMissing()
    {
        folder.Edit(LimitMembers, "eu-ban,camphor,76-22-2,,,", "eu-ban,camphor,76-22-2,,,none");

        folder.ShouldReport(LimitMembers, "eu-ban", "factor \"none\" is no number");
    }
}
