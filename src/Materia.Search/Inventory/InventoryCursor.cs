using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Materia.Catalogue.Inventory;

namespace Materia.Search.Inventory;

/// <summary>
/// Writes and reads the place after which a page of the inventory starts: the ordinal of the last entry, behind a seal over it, the
/// request and the inventory's checksum. The seal holds no secret; it catches cursors of another search or another import.
/// </summary>
internal static class InventoryCursor
{
    private const int SealLength = 16;

    /// <summary>The cursor of the page after the entry with this ordinal.</summary>
    public static string Write(NameInventory inventory, InventoryRequest request, int last)
    {
        var ordinal = last.ToString(CultureInfo.InvariantCulture);
        return Seal(inventory, request, ordinal) + ordinal;
    }

    /// <summary>The ordinal of the last entry of the page before; gives the fault when this is no cursor of this search.</summary>
    public static SearchFault? Read(string cursor, NameInventory inventory, InventoryRequest request, out int last)
    {
        last = -1;
        var ordinal = cursor.Length > SealLength ? cursor[SealLength..] : "";
        return int.TryParse(ordinal, NumberStyles.None, CultureInfo.InvariantCulture, out last) && Seal(inventory, request, ordinal) + ordinal == cursor
            ? null
            : new SearchFault("after", "This cursor belongs to another search or another import of the inventory; leave it out to start from the first page.");
    }

    private static string Seal(NameInventory inventory, InventoryRequest request, string ordinal)
    {
        var functions = string.Join(',', request.Functions.Order(StringComparer.Ordinal));
        var text = string.Create(CultureInfo.InvariantCulture, $"{inventory.Checksum}:{ordinal}:{functions.Length}:{functions}:{request.Text}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.Unicode.GetBytes(text)))[..SealLength];
    }
}
