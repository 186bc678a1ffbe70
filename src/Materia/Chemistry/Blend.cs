using Materia.Catalogue;
using Materia.Chemistry.Materials;
using Materia.Chemistry.Melting;

namespace Materia.Chemistry;

/// <summary>What is mixed: components by mass, on one release of the catalogue. The order of the components changes no result.</summary>
public sealed class Blend
{
    /// <summary>The temperature of the equilibrium that the steps of melting show when nothing else is asked [Cel].</summary>
    public const int UsualExplainAt = 20;

    /// <summary>Makes a blend of <paramref name="components"/>.</summary>
    /// <param name="components">The components; their mass fractions are finite, not negative and not all nought. Sums other than 1 are allowed: every result takes ratios.</param>
    /// <param name="release">The release whose fatty-acid table the profiles refer to.</param>
    /// <param name="explain">Whether the results carry their steps.</param>
    /// <param name="meltingModel">The model that melting is worked out with.</param>
    /// <param name="explainAt">The temperature of the equilibrium that the steps of melting show [Cel], a whole degree from −10 to 80.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="explainAt"/> lies outside the curve.</exception>
    /// <exception cref="ArgumentException">A mass fraction is negative or not finite, or all are nought.</exception>
    public Blend(
        IReadOnlyList<BlendComponent> components, Release release, bool explain = false,
        MeltingModel meltingModel = MeltingModel.ClassSolutions, int explainAt = UsualExplainAt)
    {
        ArgumentNullException.ThrowIfNull(components);
        ArgumentNullException.ThrowIfNull(release);
        ArgumentOutOfRangeException.ThrowIfLessThan(explainAt, SolidContentCurve.From);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(explainAt, SolidContentCurve.To);
        double total = 0;
        foreach (var component in components)
        {
            if (!double.IsFinite(component.MassFraction) || component.MassFraction < 0)
            {
                throw new ArgumentException($"The mass fraction of {component.Name} must be a finite number that is not negative.", nameof(components));
            }

            total += component.MassFraction;
        }

        if (!(total > 0) || !double.IsFinite(total))
        {
            throw new ArgumentException("A blend needs at least one component with a mass fraction above nought.", nameof(components));
        }

        Components = components;
        Release = release;
        Explain = explain;
        MeltingModel = meltingModel;
        ExplainAt = explainAt;
        TotalMass = total;
        var index = MaterialIndex.For(release);
        Materials = new Material[components.Count];
        for (var i = 0; i < Materials.Length; i++)
        {
            Materials[i] = index.Find(components[i].Ingredient);
        }
    }

    /// <summary>The components, in the order given.</summary>
    public IReadOnlyList<BlendComponent> Components { get; }

    /// <summary>The release that the components come from.</summary>
    public Release Release { get; }

    /// <summary>Whether the results carry their steps.</summary>
    public bool Explain { get; }

    /// <summary>The model that melting is worked out with.</summary>
    public MeltingModel MeltingModel { get; }

    /// <summary>The temperature of the equilibrium that the steps of melting show [Cel].</summary>
    public int ExplainAt { get; }

    /// <summary>The sum of the mass fractions as given; 1 for a whole formula.</summary>
    public double TotalMass { get; }

    /// <summary>What follows from each component's record, in the order of <see cref="Components"/>.</summary>
    internal Material[] Materials { get; }
}

/// <summary>One material of a blend.</summary>
/// <param name="Name">What results call it: the ingredient's id, or the maker's own name for it.</param>
/// <param name="MassFraction">Its share of the formula's mass, 0 to 1.</param>
/// <param name="Ingredient">What is known of it; a maker's own material is described in the same terms, with <c>own</c> as source.</param>
public sealed record BlendComponent(string Name, double MassFraction, Ingredient Ingredient);
