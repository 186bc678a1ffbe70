using Materia.Formulation;

namespace Materia.Api.Pages.Formulas;

/// <summary>Formulas to begin with; lessons work their examples on them. Written for this page, common practice in their shares.</summary>
public static class ExampleFormulas
{
    /// <summary>A whipped mask with a clay.</summary>
    public static Formula Mask { get; } = new()
    {
        Title = "Whipped cupuacu hair mask",
        Use = "hair-mask-rinse-off",
        Market = Market.Eu,
        Lines =
        [
            Line("cupuacu-butter", 30), Line("babassu-oil", 22.5m), Line("mango-butter", 12), Line("cetyl-alcohol", 3),
            Line("kaolin", 8) with { Phase = Phase.CoolDown }, Line("lavender-oil", 0.5m) with { Phase = Phase.CoolDown },
            new() { Ingredient = "sunflower-oil", Balance = true },
        ],
        Batch = new() { Mass = 250, Unit = "g", ScaleResolution = 0.1m, LossPercent = 3, JarVolume = 120 },
        Whip = new() { OverrunPercent = 40 },
    };

    /// <summary>A firm balm with wax.</summary>
    public static Formula Balm { get; } = new()
    {
        Title = "Beeswax balm for hands",
        Use = "hand-balm",
        Market = Market.Eu,
        Lines = [Line("beeswax", 20), Line("shea-butter", 30), Line("cocoa-butter", 10), new() { Ingredient = "sweet-almond-oil", Balance = true }],
        Batch = new() { Mass = 100, Unit = "g", ScaleResolution = 0.1m, JarVolume = 30 },
    };

    /// <summary>A blend of oils.</summary>
    public static Formula Oil { get; } = new()
    {
        Title = "Light oil for dry ends",
        Use = "hair-oil-leave-on",
        Market = Market.Eu,
        Lines = [Line("jojoba-oil", 30), Line("argan-oil", 20), Line("rosemary-oil", 0.3m), new() { Ingredient = "sunflower-oil", Balance = true }],
        Batch = new() { Mass = 50, Unit = "g", ScaleResolution = 0.01m },
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [Mask, Balm, Oil];

    private static FormulaLine Line(string id, decimal percent) => new() { Ingredient = id, Percent = percent };
}
