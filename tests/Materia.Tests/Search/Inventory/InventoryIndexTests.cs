using Materia.Catalogue;
using Materia.Catalogue.Inventory;
using Materia.Search.Inventory;
using Materia.Seed.Inventory;
using Materia.Tests.Seed.Inventory;

namespace Materia.Tests.Search.Inventory;

public sealed class InventoryIndexTests : IDisposable
{
    private static readonly NameInventory Sample = Read();
    private readonly InventoryIndex index = InventoryIndex.Build(Sample);

    public void Dispose() => index.Dispose();

    [Theory]
    [InlineData("cetyl alcohol", "CETYL ALCOHOL")]
    [InlineData("CETRIMONIUM", "CETRIMONIUM CHLORIDE")]
    [InlineData("peg 100 stear", "PEG-100 STEARATE")]
    [InlineData("56-81-5", "GLYCERIN")]
    [InlineData("56815", "GLYCERIN")]
    [InlineData("931-296-8", "COCAMIDOPROPYL BETAINE")]
    [InlineData("dexpanthenol", "PANTHENOL")]
    [InlineData("adeps lanae", "LANOLIN")]
    public void Search_NameOrNumber_FindsTheEntryFirst(string text, string expected)
    {
        var page = index.Search(new InventoryRequest { Text = text });

        page.AsTyped.ShouldBeTrue();
        page.Entries[0].InciName.ShouldBe(expected);
    }

    [Fact]
    public void Search_Misspelled_FindsTheEntryAndSaysSo()
    {
        var page = index.Search(new InventoryRequest { Text = "phenoxyetanol" });

        page.AsTyped.ShouldBeFalse();
        page.Entries[0].InciName.ShouldBe("PHENOXYETHANOL");
    }

    [Fact]
    public void Search_ByFunctionPageByPage_GivesEachEntryOnce()
    {
        var expected = Sample.Entries.Where(e => e.Functions.Contains("humectant")).Select(e => e.InciName).ToList();
        expected.Count.ShouldBeGreaterThan(3);
        var found = new List<string>();
        var request = new InventoryRequest { Functions = ["humectant"], Limit = 3 };
        for (string? after = ""; after is not null;)
        {
            var page = index.Search(request with { After = after.Length == 0 ? null : after });
            page.Total.ShouldBe(expected.Count);
            found.AddRange(page.Entries.Select(e => e.InciName));
            after = page.Next;
        }

        found.ShouldBe(expected);
    }

    [Fact]
    public void Search_CursorOfAnotherSearch_IsAFault()
    {
        var next = index.Search(new InventoryRequest { Limit = 3 }).Next!;

        index.Search(new InventoryRequest { Limit = 3, Text = "oil", After = next }).Faults.ShouldHaveSingleItem().Member.ShouldBe("after");
        index.Search(new InventoryRequest { Limit = 3, After = "zzz" }).Faults.ShouldHaveSingleItem();
        index.Search(new InventoryRequest { Limit = 3, After = next }).Faults.ShouldBeEmpty();
    }

    private static NameInventory Read()
    {
        var entries = InventoryReader.Read(InventoryReaderTests.SamplePath).Entries!;
        return new NameInventory(entries, CatalogueJson.InventoryChecksum(entries), DateTimeOffset.UnixEpoch);
    }
}
