using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Chemistry.Materials;

/// <summary>
/// Walther coefficients of single oils, fitted for this library to measured points; they take the place of the composition model inside
/// their range. Two-point fits come from figures rounded to whole numbers, so their slope is known to ±0.15 only.
/// </summary>
/// <param name="A">A of W = A − B log₁₀(T/313.15).</param>
/// <param name="B">B.</param>
/// <param name="From">The lowest temperature measured [Cel].</param>
/// <param name="To">The highest temperature measured [Cel].</param>
/// <param name="Points">How many points were fitted.</param>
/// <param name="Source">The key of the source in which the points were seen.</param>
/// <param name="Evidence">How they were seen.</param>
internal sealed record OilViscosity(double A, double B, double From, double To, int Points, string Source, Evidence Evidence)
{
    private const string Compilation = "svo-compilation";

    /// <summary>The table by ingredient id.</summary>
    public static FrozenDictionary<string, OilViscosity> Table { get; } = new Dictionary<string, OilViscosity>(StringComparer.Ordinal)
    {
        ["castor-oil"] = Seen(0.38143, 3.4684, 20, 99, 6),
        ["olive-oil"] = Seen(0.21586, 2.9612, 38, 99, 2),
        ["sweet-almond-oil"] = Seen(0.20630, 2.8334, 38, 99, 2),
        ["coconut-oil"] = Seen(0.16619, 3.2353, 38, 110, 8),
        ["palm-kernel-oil"] = Seen(0.16741, 2.9357, 38, 99, 2),
        ["sunflower-oil"] = Seen(0.17572, 2.7097, 38, 99, 2),
        ["soybean-oil"] = Seen(0.17945, 2.9623, 0, 40, 4),
        ["cottonseed-oil"] = Seen(0.19026, 2.9661, 0, 60, 5),
        ["peanut-oil"] = Seen(0.20862, 3.0011, 10, 40, 3),
        ["canola-oil"] = Seen(0.19570, 2.9532, 4, 40, 4),
        ["flaxseed-oil"] = Seen(0.16352, 2.8838, 38, 99, 2),
        ["hemp-seed-oil"] = Seen(0.15947, 2.8296, 38, 99, 2),
        ["crambe-oil"] = Seen(0.23290, 2.7694, 24, 110, 7),
        ["jojoba-oil"] = new(0.14868, 2.8593, 40, 100, 2, "recalled", Evidence.Memory),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static OilViscosity Seen(double a, double b, double from, double to, int points) =>
        new(a, b, from, to, points, Compilation, Evidence.Secondary);
}
