using System.Text;
using Materia.Seed.Inventory;

namespace Materia.Tests.Seed.Inventory;

public sealed class InventoryReaderTests : IDisposable
{
    private const string Header = "INCI name,CAS No,EC No,Function";

    private readonly string path = Path.GetTempFileName();

    public void Dispose() => File.Delete(path);

    [Fact]
    public void Read_SampleInOfficialForm_HoldsEveryRowWithoutFault()
    {
        var file = InventoryReader.Read(SamplePath);

        file.Faults.ShouldBeEmpty();
        file.Rows.ShouldBe(60);
        file.Entries!.Count.ShouldBe(60);
        var panthenol = file.Entries.Single(e => e.InciName == "PANTHENOL");
        panthenol.InnName.ShouldBe("dexpanthenol");
        panthenol.CasNumbers.ShouldBe(["81-13-0"]);
        panthenol.EcNumbers.ShouldBe(["201-327-3", "240-540-6"]);
        panthenol.Functions.ShouldBe(["antistatic", "hair-conditioning", "skin-conditioning"]);
    }

    [Theory]
    [InlineData(65001, false)]
    [InlineData(65001, true)]
    [InlineData(1200, true)]
    [InlineData(1201, true)]
    [InlineData(1252, false)]
    public void Read_AnyEncodingOfSpreadsheets_KeepsAccents(int codePage, bool mark)
    {
        var encoding = codePage == 65001 ? new UTF8Encoding(mark) : CodePagesEncodingProvider.Instance.GetEncoding(codePage) ?? Encoding.GetEncoding(codePage);
        File.WriteAllText(path, $"{Header}\nEXTRAIT DE KARITÉ ŒUVRÉ,194043-92-0,-,HUMECTANT\n", encoding);

        InventoryReader.Read(path).Entries!.Single().InciName.ShouldBe("EXTRAIT DE KARITÉ ŒUVRÉ");
    }

    [Fact]
    public void Read_AccentAcrossTwoBlocks_IsStillUtf8()
    {
        // The file is probed in blocks of 65,536 bytes; with one byte less before it the letter of two bytes lies across the border.
        var before = new StringBuilder("INCI name,Function\n");
        before.Append('A', 65_535 - before.Length);
        File.WriteAllText(path, before + "É,HUMECTANT\n", new UTF8Encoding(false));

        InventoryReader.Read(path).Entries!.Single().InciName.ShouldEndWith("AÉ");
    }

    [Theory]
    [InlineData("Function;CAS No;Reference;INCI name\nHUMECTANT;56-81-5;7;GLYCERIN\n")]
    [InlineData("inci_name\tcas_first\tfunctions\nGLYCERIN\t56-81-5\tHUMECTANT\n")]
    [InlineData("Inventory\nFile of some day\n\nINCI name,CAS No,Function\nGLYCERIN,56-81-5,HUMECTANT\n")]
    [InlineData("\"INCI name\",\"CAS No\",\"Function\"\n\" GLYCERIN \",\"56-81-5\",\"HUMECTANT\"\n")]
    public void Read_AnyOrderSeparatorAndLinesAbove_FindsTheColumns(string text)
    {
        File.WriteAllText(path, text);

        var file = InventoryReader.Read(path);

        file.Faults.ShouldBeEmpty();
        var entry = file.Entries!.Single();
        (entry.InciName, entry.CasNumbers.Single(), entry.Functions.Single()).ShouldBe(("GLYCERIN", "56-81-5", "humectant"));
    }

    // 56-81-5 and 200-289-5 are glycerin's; their last digits are changed.
    [Theory]
    [InlineData("GLYCERIN,56-81-6,-,", "check digit of CAS number 56-81-6")]
    [InlineData("GLYCERIN,-,200-289-6,", "check digit of EC number 200-289-6")]
    [InlineData("GLYCERIN,5681,-,", "'5681' holds no CAS number")]
    [InlineData(",56-81-5,-,", "no INCI name")]
    [InlineData("GLYCERIN,56-81-5", "the row has 2 cells and the header 4")]
    public void Read_RowWithFault_ReportsItsLineAndKeepsTheOthers(string row, string gist)
    {
        File.WriteAllText(path, $"{Header}\n{row}\nUREA,57-13-6,200-315-5,HUMECTANT\n");

        var file = InventoryReader.Read(path);

        var fault = file.Faults.ShouldHaveSingleItem();
        fault.Line.ShouldBe(2);
        fault.Message.ShouldContain(gist);
        file.Entries!.Single(e => e.InciName == "UREA").CasNumbers.ShouldBe(["57-13-6"]);
    }

    [Fact]
    public void Read_NameTwiceWithOtherData_PutsNumbersAndFunctionsTogether()
    {
        File.WriteAllText(path, $"{Header}\nUREA,57-13-6,-,HUMECTANT\nUrea,-,200-315-5,\"HUMECTANT, BUFFERING\"\nUREA,57-13-6,-,HUMECTANT\n");

        var file = InventoryReader.Read(path);

        var urea = file.Entries!.Single();
        urea.CasNumbers.ShouldBe(["57-13-6"]);
        urea.EcNumbers.ShouldBe(["200-315-5"]);
        urea.Functions.ShouldBe(["humectant", "buffering"]);
        file.Faults.Select(f => f.Line).ShouldBe([3, 4]);
        file.Faults[0].Message.ShouldContain("line 2");
        file.Faults[1].Message.ShouldContain("adds nothing");
    }

    [Theory]
    [InlineData("")]
    [InlineData("name,number\nGLYCERIN,56-81-5\n")]
    [InlineData("INCI name,CAS No\n")]
    public void Read_NoInventory_HoldsNoEntriesAndSaysWhatToDo(string text)
    {
        File.WriteAllText(path, text);

        var file = InventoryReader.Read(path);

        file.Entries.ShouldBeNull();
        file.Faults.ShouldHaveSingleItem().Message.ShouldContain("export");
    }

    internal static string SamplePath => Path.Combine(RepositoryRoot.SeedData, "..", "tests", "Materia.Tests", "Seed", "Inventory", "inventory-sample.csv");
}
