using System.Globalization;
using Materia.Chemistry;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>The README's table of solid contents is what the code computes.</summary>
public sealed class ReadmeTableTests
{
    [Theory]
    [InlineData("coconut oil", "coconut-oil", 100, "")]
    [InlineData("cocoa butter", "cocoa-butter", 100, "")]
    [InlineData("shea butter", "shea-butter", 100, "")]
    [InlineData("sunflower oil with 5 % beeswax", "sunflower-oil", 95, "beeswax")]
    public void Readme_Row_IsComputed(string row, string first, double percent, string second)
    {
        var release = SeedCatalogue.Release;
        List<BlendComponent> components = [new(first, percent / 100, release.FindIngredient(first)!)];
        if (second.Length > 0)
        {
            components.Add(new(second, 1 - (percent / 100), release.FindIngredient(second)!));
        }

        var melting = BlendMelting.Of(new Blend(components, release));
        var shown = File.ReadLines(Path.Combine(CheckFiles.Root(), "README.md")).Single(l => l.StartsWith($"| {row} |", StringComparison.Ordinal));
        var solids = new[] { 10, 20, 25, 30, 32, 35, 40 }.Select(t => melting.SolidContent.Single(p => p.Temperature == t).Percent);
        var expected = solids.Append(melting.ClearPoint!.Value!.Value).Select(v => v.ToString("F0", CultureInfo.InvariantCulture));
        shown.ShouldBe($"| {row} | {string.Join(" | ", expected)} |");
    }
}
