using Materia.Catalogue;
using Materia.Catalogue.Inventory;

namespace Materia.Tests.Catalogue;

public sealed class CuratedLinksTests
{
    private static readonly CuratedLinks Links = new(new Release(1, DateTimeOffset.UnixEpoch, "", Samples.Content() with
    {
        Ingredients = [Named("kaolin-pink", "Kaolin", "1332-58-7"), Named("kaolin", "Kaolin", "1332-58-7"), Named("china-clay-calcined", "Calcined Kaolin", "1332-58-7")],
    }));

    [Fact]
    public void WithName_SeveralIngredientsUnderOneInciName_GivesAllInOrder() =>
        Links.WithName(Entry("KAOLIN", "1332-58-7")).ShouldBe(["kaolin", "kaolin-pink"]);

    [Fact]
    public void WithNumberOnly_SharedCasNumber_GivesThoseOfOtherNames() =>
        Links.WithNumberOnly(Entry("KAOLIN", "1332-58-7")).ShouldBe(["china-clay-calcined"]);

    [Fact]
    public void Links_UnknownEntry_GivesNone()
    {
        Links.WithName(Entry("UREA", "57-13-6")).ShouldBeEmpty();
        Links.WithNumberOnly(Entry("UREA", "57-13-6")).ShouldBeEmpty();
    }

    private static InventoryEntry Entry(string name, string cas) => new() { InciName = name, CasNumbers = [cas] };

    private static Ingredient Named(string id, string inciName, string cas)
    {
        var plain = Samples.Ingredient(id);
        return plain with
        {
            Names = [.. plain.Names, new IngredientName { Text = inciName, Kind = NameKind.Inci, Evidence = Evidence.Memory, Source = "recalled" }],
            Numbers = [new RegistryNumber { Registry = Registry.Cas, Number = cas, Evidence = Evidence.Memory, Source = "recalled" }],
        };
    }
}
