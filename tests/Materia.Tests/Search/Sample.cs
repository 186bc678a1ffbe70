using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search;

/// <summary>A release made by hand for these tests: true names and registry numbers, round figures that put ends where a test needs them.</summary>
internal static class Sample
{
    private static readonly DateTimeOffset Published = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The release, number 7.</summary>
    public static Release Release { get; } = Make(7, [.. SampleFats.All, .. SampleMaterials.All]);

    /// <summary>Its index, shared by all tests.</summary>
    public static IngredientIndex Index { get; } = IngredientIndex.Build(Release);

    /// <summary>Makes a release of other ingredients.</summary>
    public static Release Make(int number, IReadOnlyList<Ingredient> ingredients)
    {
        var content = new CatalogueContent { Ingredients = ingredients, Sources = [], FattyAcids = SampleAcids.Table, Uses = [] };
        return new Release(number, Published, CatalogueJson.Checksum(content), content);
    }

    /// <summary>Searches for text alone.</summary>
    public static SearchPage Search(string text) => Index.Search(new SearchRequest { Text = text, Limit = 100 });

    /// <summary>The ids found, in order.</summary>
    public static IReadOnlyList<string> Ids(this SearchPage page)
    {
        page.Faults.ShouldBeEmpty();
        return [.. page.Hits.Select(h => h.IngredientId)];
    }

    /// <summary>The ids that a range of a property finds, in the order of the names.</summary>
    public static IReadOnlyList<string> InRange(PropertyGroup group, string range, RangeMatch match = RangeMatch.Overlap) =>
        Index.Search(new SearchRequest { Properties = new Dictionary<PropertyGroup, DecimalRange> { [group] = Range(range) }, RangeMatch = match, Limit = 100 }).Ids();

    /// <summary>Reads a range.</summary>
    public static DecimalRange Range(string text)
    {
        DecimalRange.TryParse(text, out var range).ShouldBeTrue(text);
        return range;
    }
}
