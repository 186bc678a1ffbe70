using Materia.Api.Tests.Databases;
using Materia.Catalogue.Inventory;
using Materia.Data;

namespace Materia.Api.Tests.Data;

/// <summary>The inventory of names on an engine.</summary>
public abstract class InventoryStoreTests(TestDatabase database) : ReleaseTests(database)
{
    private static readonly InventoryEntry Glycerin = new()
    {
        InciName = "GLYCERIN",
        PharmacopoeiaName = "glycerolum",
        CasNumbers = ["56-81-5"],
        EcNumbers = ["200-289-5"],
        Functions = ["denaturant", "humectant"],
    };

    private static readonly InventoryEntry Betaine = new()
    {
        InciName = "COCAMIDOPROPYL BETAINE",
        CasNumbers = ["61789-40-0", "83138-08-3"],
        EcNumbers = ["263-058-8", "931-296-8"],
    };

    [Fact]
    public async Task ReadAsync_NothingImported_IsNull()
    {
        await using var context = Database.CreateContext();

        (await new InventoryStore(context).ReadAsync(Cancellation)).ShouldBeNull();
    }

    [Fact]
    public async Task ReplaceAsync_Entries_ComeBackAsTheyWere()
    {
        await ReplaceAsync([Betaine, Glycerin]);

        var inventory = (await ReadAsync())!;
        inventory.Entries.Select(e => e.InciName).ShouldBe(["COCAMIDOPROPYL BETAINE", "GLYCERIN"]);
        inventory.Entries[0].CasNumbers.ShouldBe(Betaine.CasNumbers);
        inventory.Entries[0].EcNumbers.ShouldBe(Betaine.EcNumbers);
        inventory.Entries[1].PharmacopoeiaName.ShouldBe("glycerolum");
        inventory.Entries[1].Functions.ShouldBe(Glycerin.Functions);
    }

    [Fact]
    public async Task ReplaceAsync_Twice_ChangesNothingAndOtherEntriesReplaceAll()
    {
        (await ReplaceAsync([Betaine, Glycerin])).ShouldBeTrue();
        (await ReplaceAsync([Betaine, Glycerin])).ShouldBeFalse();
        (await ReplaceAsync([Glycerin])).ShouldBeTrue();

        (await ReadAsync())!.Entries.Select(e => e.InciName).ShouldBe(["GLYCERIN"]);
    }

    [Fact]
    public async Task ReplaceAsync_NumberWithWrongCheckDigit_IsRefusedAndTheOldStays()
    {
        await ReplaceAsync([Glycerin]);

        var refusal = await Should.ThrowAsync<Exception>(() => ReplaceAsync([Betaine with { CasNumbers = ["61789-40-1"] }]));

        refusal.GetBaseException().Message.ShouldContain("ck_inventory_number_cas_is_valid");
        (await ReadAsync())!.Entries.Select(e => e.InciName).ShouldBe(["GLYCERIN"]);
    }

    private async Task<bool> ReplaceAsync(IReadOnlyList<InventoryEntry> entries)
    {
        await using var context = Database.CreateContext();
        return await new InventoryStore(context).ReplaceAsync(entries, DateTimeOffset.UnixEpoch, Cancellation);
    }

    private async Task<NameInventory?> ReadAsync()
    {
        await using var context = Database.CreateContext();
        return await new InventoryStore(context).ReadAsync(Cancellation);
    }
}

public sealed class SqliteInventoryStoreTests(SqliteFile database) : InventoryStoreTests(database), IClassFixture<SqliteFile>;

public sealed class PostgreSqlInventoryStoreTests(PostgreSqlDatabase database) : InventoryStoreTests(database), IClassFixture<PostgreSqlDatabase>;
