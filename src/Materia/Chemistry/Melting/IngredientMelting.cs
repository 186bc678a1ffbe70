using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Materia.Catalogue;

namespace Materia.Chemistry.Melting;

/// <summary>How one ingredient melts on its own, worked out when it is first asked for and then kept for as long as its release.</summary>
public static class IngredientMelting
{
    private const double Accuracy = 0.02;
    private const double HighestClearPoint = 130;
    private static readonly ConditionalWeakTable<Release, ConcurrentDictionary<string, BlendMelting>> Known = [];

    /// <summary>The key of the <see cref="Method"/> that these figures come from.</summary>
    public static string MethodId => MeltingSum.Method;

    /// <summary>
    /// The melting of <paramref name="ingredient"/> alone in the recommended model. Where the catalogue holds measured figures
    /// that lie outside the computed band, a warning names both; see <see cref="MeasuredMelting"/>.
    /// </summary>
    /// <param name="ingredient">The ingredient; one that is not of the release is worked out anew at each call.</param>
    /// <param name="release">The release.</param>
    public static BlendMelting Of(Ingredient ingredient, Release release)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(release);
        if (!ReferenceEquals(release.FindIngredient(ingredient.Id), ingredient))
        {
            return WorkOut(ingredient, release);
        }

        // Two requests may work the same one out at the same moment; both come to the same.
        var known = Known.GetValue(release, static _ => []);
        return known.TryGetValue(ingredient.Id, out var melting) ? melting : known.GetOrAdd(ingredient.Id, WorkOut(ingredient, release));
    }

    /// <summary>
    /// The figures that a search looks at, without curve and band; <see langword="null"/> when the melting of
    /// <paramref name="ingredient"/> cannot be worked out. They agree with <see cref="Of"/>.
    /// </summary>
    public static MeltingFigures? FiguresOf(Ingredient ingredient, Release release)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        var blend = Alone(ingredient, release);
        var species = MeltingSpace.For(blend).Compose(blend);
        if (species.FatMass <= 0)
        {
            return null;
        }

        // The level as the clear point of a blend has it.
        var equilibrium = new PhaseEquilibrium(species.System(ClassTable.Of));
        var level = Math.Min(1, equilibrium.SolidContentAt(10) / 20);
        return new(
            equilibrium.SolidContentAt(20),
            equilibrium.SolidContentAt(25),
            equilibrium.SolidContentAt(32),
            equilibrium.SolidContentAt(35),
            TemperatureAt(equilibrium, level));
    }

    private static BlendMelting WorkOut(Ingredient ingredient, Release release)
    {
        var melting = BlendMelting.Of(Alone(ingredient, release));
        return melting with { Warnings = [.. melting.Warnings, .. MeasuredMelting.Disagreements(ingredient, melting)] };
    }

    private static Blend Alone(Ingredient ingredient, Release release) => new([new BlendComponent(ingredient.Id, 1, ingredient)], release);

    private static double? TemperatureAt(PhaseEquilibrium equilibrium, double level)
    {
        double low = SolidContentCurve.From, high = HighestClearPoint;
        if (equilibrium.SolidContentAt(low) <= level)
        {
            return null;
        }

        while (high - low > Accuracy)
        {
            var middle = (low + high) / 2;
            if (equilibrium.SolidContentAt(middle) > level)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }
}
