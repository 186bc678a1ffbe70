using System.Text;
using System.Text.Json;
using CsCheck;
using Materia.Catalogue;
using Materia.Seed.Formatting;

namespace Materia.Tests.Seed;

/// <summary>Properties of the canonical text that hold for any figures and texts.</summary>
public sealed class CanonicalTextTests
{
    private static readonly Gen<decimal> Values =
        Gen.Select(Gen.Int[-1_000_000, 1_000_000], Gen.Int[0, 4], (digits, scale) => new decimal(Math.Abs(digits), 0, 0, digits < 0, (byte)scale));

    // Any text without half characters, which JSON cannot carry: letters, quotes, controls, other scripts and emoji alike.
    private static readonly Gen<string> Texts =
        Gen.OneOf(Gen.Char[' ', '~'].Select(c => c.ToString()), Gen.OneOf("é", "ø", "\"", "\\", "\n", "\u00A0", "シア", "🌿", "}", ", "))
            .Array[1, 12].Select(string.Concat);

    private static readonly Gen<Figure> Figures =
        Gen.Select(Gen.Enum<Property>(), Values.Nullable(), Values.Nullable(), Values.Nullable(), Texts, Gen.Bool, (property, low, high, temperature, note, used) => new Figure
        {
            Property = property,
            Low = low,
            High = high,
            Unit = "1",
            At = temperature is null ? null : new Conditions { Temperature = temperature },
            Used = used,
            Evidence = Evidence.Memory,
            Source = "recalled",
            Note = note,
        });

    private static readonly Gen<Ingredient> Ingredients =
        Gen.Select(Texts, Figures.Array[0, 6], Texts.Array[0, 3], (name, figures, former) => new Ingredient
        {
            Id = "example",
            FormerIds = former,
            Kind = IngredientKind.Butter,
            Names = [new IngredientName { Text = name, Kind = NameKind.Common, Evidence = Evidence.Memory, Source = "recalled" }],
            Properties = figures,
        });

    [Fact]
    public void Write_AnyIngredient_ReadsBackTheSame() => Ingredients.Sample(ingredient =>
    {
        var text = CanonicalText.Write(ingredient);
        var again = JsonSerializer.Deserialize<Ingredient>(text, CatalogueJson.Options)!;
        again.Properties.ShouldBe(ingredient.Properties);
        again.Names.ShouldBe(ingredient.Names);
        again.FormerIds.ShouldBe(ingredient.FormerIds);
        CanonicalText.Write(again).ShouldBe(text);
    });

    [Fact]
    public void Write_AnyIngredient_GivesEachStatementOneLine() => Ingredients.Sample(ingredient =>
    {
        var lines = Encoding.UTF8.GetString(CanonicalText.Write(ingredient)).Split('\n');

        // Id, kind, and the braces around them; a list adds its two brackets, or one line when it holds plain texts.
        var expected = 4 + (ingredient.FormerIds.Count > 0 ? 1 : 0) + 3 + (ingredient.Properties.Count > 0 ? 2 + ingredient.Properties.Count : 0);
        lines.Length.ShouldBe(expected + 1);
        lines[^1].ShouldBeEmpty();
    });
}
