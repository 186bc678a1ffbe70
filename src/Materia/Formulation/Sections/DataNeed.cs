using System.Runtime.CompilerServices;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Sections;

/// <summary>The data that a section needs of each material, told by asking for the section of that material alone.</summary>
internal sealed class DataNeed
{
    private readonly Func<EvaluationInput, double> coverage;
    private readonly Func<Blend, double> alone;

    // An ingredient never changes, so whether it has the data is worked out once for as long as its release lives.
    private readonly ConditionalWeakTable<Ingredient, object> met = [];

    private DataNeed(EvaluationSection section, string concerned, Func<IngredientKind, bool> concerns, Func<EvaluationInput, double> coverage, Func<Blend, double> alone)
    {
        Section = section;
        Concerned = concerned;
        Concerns = concerns;
        this.coverage = coverage;
        this.alone = alone;
    }

    /// <summary>Every section that rests on data of the materials.</summary>
    public static IReadOnlyList<DataNeed> All { get; } =
    [
        new(ChemistrySections.FattyAcids, "what contains fatty acids", Kinds.BearsFattyAcids, i => i.Of(ChemistrySections.FattyAcids).Coverage, b => FattyAcidComposition.Of(b).Coverage),
        new(ChemistrySections.IodineValue, "the lipids", Kinds.IsLipid, i => i.Of(ChemistrySections.IodineValue).Coverage, b => IodineValue.Of(b).Coverage),
        new(ChemistrySections.SaponificationValue, "the lipids", Kinds.IsLipid, i => i.Of(ChemistrySections.SaponificationValue).Coverage, b => SaponificationValue.Of(b).Coverage),
        new(ChemistrySections.Melting, "everything but powders", k => !Kinds.IsPowder(k), i => i.Of(ChemistrySections.Melting).Coverage, BlendMelting.CoverageOf),
        new(FormulaDensity.Section, "everything", _ => true, i => i.Of(FormulaDensity.Section).Coverage, b => BlendDensity.Of(b).Coverage),
        new(ChemistrySections.Flow, "everything", _ => true, i => i.Of(ChemistrySections.Flow).Coverage, b => BlendFlow.Of(b).Coverage),
        new(ChemistrySections.Oxidation, "what contains fatty acids", Kinds.BearsFattyAcids, i => i.Of(ChemistrySections.Oxidation).CoxValue.Coverage, b => BlendOxidation.Of(b).CoxValue.Coverage),
    ];

    /// <summary>The section.</summary>
    public EvaluationSection Section { get; }

    /// <summary>What materials it concerns, in words.</summary>
    public string Concerned { get; }

    /// <summary>Whether it concerns a kind of material.</summary>
    public Func<IngredientKind, bool> Concerns { get; }

    /// <summary>The share of the mass concerned that has data.</summary>
    public double Coverage(EvaluationInput input) => coverage(input);

    /// <summary>Whether <paramref name="ingredient"/> has the data.</summary>
    public bool IsMet(Ingredient ingredient, Release release)
    {
        if (met.TryGetValue(ingredient, out var known))
        {
            return (bool)known;
        }

        var answer = alone(new Blend([new BlendComponent(ingredient.Id, 1, ingredient)], release)) > 0;
        met.AddOrUpdate(ingredient, answer);
        return answer;
    }
}
