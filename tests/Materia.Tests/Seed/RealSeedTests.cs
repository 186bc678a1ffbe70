using System.Text;
using System.Text.Json;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Seed;
using Materia.Seed.Formatting;

namespace Materia.Tests.Seed;

/// <summary>The seed data that is shipped.</summary>
public sealed class RealSeedTests
{
    private static readonly Lazy<SeedResult> Shipped = new(() => SeedReader.Read(RepositoryRoot.SeedData));

    [Fact]
    public void Check_ShippedData_HasNoFault()
    {
        var faults = SeedCheck.Run(RepositoryRoot.SeedData);

        faults.ShouldBeEmpty($"{faults.Count} faults, the first of them:\n{string.Join('\n', faults.Take(20))}");
    }

    [Fact]
    public void Read_ShippedData_HasEverySourceThatMethodsAndTheCaveatName()
    {
        var content = Shipped.Value.Content.ShouldNotBeNull();
        var sources = content.Sources.Select(s => s.Id).ToHashSet();

        AllMethods.ById.Values.SelectMany(m => m.Sources).Concat(ComedogenicNote.CaveatSources)
            .Where(key => !sources.Contains(key))
            .ShouldBeEmpty();
    }

    [Fact]
    public void Write_EveryShippedIngredient_ReadsBackTheSame()
    {
        var content = Shipped.Value.Content.ShouldNotBeNull();

        content.Ingredients.ShouldNotBeEmpty();
        foreach (var ingredient in content.Ingredients)
        {
            var text = CanonicalText.Write(ingredient);
            var again = JsonSerializer.Deserialize<Ingredient>(text, CatalogueJson.Options)!;

            // Records hold lists, which compare by reference; their JSON compares by content.
            JsonSerializer.Serialize(again, CatalogueJson.Options).ShouldBe(JsonSerializer.Serialize(ingredient, CatalogueJson.Options));
            Encoding.UTF8.GetString(CanonicalText.Write(again)).ShouldBe(Encoding.UTF8.GetString(text));
        }
    }
}
