using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

/// <summary>The form of tables, and what the fatty acids' formulas tell.</summary>
public sealed class TableCheckTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("name,systematic_name", "nam,systematic_name", "column \"name\" is missing")]
    [InlineData("name,systematic_name", "nam,systematic_name", "unknown column \"nam\"")]
    [InlineData("name,systematic_name", "systematic_name,name", "in this order")]
    [InlineData("check_in,note", "check_in,note,note", "once each")]
    public void Read_WrongHeader_IsReportedAtLineOne(string old, string replacement, string gist)
    {
        folder.Edit(Acids, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == Acids && f.Line == 1 && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Acids, "stearic acid,", "stearic acid,,", "stearic", "the row has 16 fields where the header has 15")]
    [InlineData(Acids, "stearic acid", "\"stearic\" acid", "stearic", "a quote is out of place")]
    [InlineData(Acids, "stearic acid", "\"stearic acid", "stearic", "a quote is out of place")]
    [InlineData(Acids, "cyc-19:1", "\ncyc-19:1", "\ncyc-19:1", "the row has 1 fields")]
    [InlineData(Acids, "284.48", "284,48", "stearic", "the row has 16 fields")]
    [InlineData(Acids, "284.48", "\"284,48\"", "stearic", "molar_mass \"284,48\" is no number; write digits with a point")]
    [InlineData(Acids, "57-11-4,18", "57-11-4,eighteen", "stearic", "carbons \"eighteen\" is no whole number")]
    [InlineData(Acids, "284.48", "", "stearic", "molar_mass is empty")]
    [InlineData(Acids, "0,false", "0,no", "stearic", "alcohol \"no\" is neither true nor false")]
    [InlineData(Acids, "69.6,published", "69.6,seen", "stearic", "evidence \"seen\" is unknown; write one of published, secondary, common-practice, memory")]
    [InlineData(Acids, "69.6,published,example-book", "69.6,published,", "stearic", "source is empty")]
    [InlineData(Acids, "69.6", "6960", "stearic", "6960 is outside -100 to 3000")]
    [InlineData(Uses, "leave-on,lips", "leave-in,lips", "Lip balm", "exposure \"leave-in\" is unknown; write one of leave-on, rinse-off")]
    public void Read_WrongRow_IsReportedAtItsLine(string file, string old, string replacement, string mark, string gist)
    {
        folder.Edit(file, old, replacement);

        // Without its row an acid is missing from the table; that alone is no fault of the profiles.
        folder.ShouldReport(file, mark, gist);
    }

    [Theory]
    [InlineData("256.43", "254.43", "palmitic", "molar_mass 254.43 does not follow from the formula, which gives 256.43")]
    [InlineData("298.47", "282.47", "ricinoleic", "which gives 298.47")]
    [InlineData("296.45", "282.46", "vernolic", "which gives 296.45")]
    [InlineData("294.5", "296.5", "sterculic", "which gives 294.48")]
    [InlineData("242.45", "240.43", "cetyl", "which gives 242.45")]
    [InlineData("16:0,palmitic", "17:0,palmitic", "palmitic", "symbol \"17:0\" does not say 16:0")]
    [InlineData("16:0-ol", "16:0-al", "cetyl", "the symbols of alcohols, and only those, end in -ol")]
    [InlineData("112-80-1,18,1", "112-80-1,18,18", "oleic acid,,112-80-1", "18 carbons and 18 double bonds are no chain")]
    public void Read_AcidThatDoesNotFitItsFormula_IsReported(string old, string replacement, string mark, string gist)
    {
        folder.Edit(Acids, old, replacement);

        SeedReader.Read(folder.Root).Faults
            .ShouldContain(f => f.File == Acids && f.Line == folder.Line(Acids, mark) && f.Message.Contains(gist, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Acids)]
    [InlineData(Uses)]
    [InlineData(SeedBlendTexts.Groups)]
    public void Read_MissingOrEmptyTable_IsReported(string file)
    {
        folder.Write(file, "");
        SeedReader.Read(folder.Root).Faults.ShouldContain(f => f.File == file && f.Message.Contains("is missing; add it", StringComparison.Ordinal));

        folder.Delete(file);
        SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem().Message.ShouldContain("the table is missing");
    }
}
