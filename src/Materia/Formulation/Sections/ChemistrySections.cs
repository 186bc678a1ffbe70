using Materia.Chemistry;

namespace Materia.Formulation.Sections;

/// <summary>The sections that chemistry alone works out.</summary>
public static class ChemistrySections
{
    /// <summary>The fatty acids.</summary>
    public static EvaluationSection<FattyAcidComposition> FattyAcids { get; } =
        new("fattyAcids", "The fatty acids of all fats together, with ranges.", i => FattyAcidComposition.Of(i.Blend));

    /// <summary>The iodine value.</summary>
    public static EvaluationSection<ComputedFigure> IodineValue { get; } =
        new("iodineValue", "The iodine value: how unsaturated the fats are.", i => Chemistry.IodineValue.Of(i.Blend));

    /// <summary>The saponification value.</summary>
    public static EvaluationSection<ComputedFigure> SaponificationValue { get; } =
        new("saponificationValue", "The saponification value: how much alkali the fats take up.", i => Chemistry.SaponificationValue.Of(i.Blend));

    /// <summary>How it melts.</summary>
    public static EvaluationSection<BlendMelting> Melting { get; } =
        new("melting", "The solid content against temperature, where it clears, how it feels in the hand.", i => BlendMelting.Of(i.Blend));

    /// <summary>How it flows.</summary>
    public static EvaluationSection<BlendFlow> Flow { get; } =
        new("flow", "The viscosity against temperature while the fats are melted.", i => BlendFlow.Of(i.Blend));

    /// <summary>How it oxidises.</summary>
    public static EvaluationSection<BlendOxidation> Oxidation { get; } =
        new("oxidation", "How readily the fats oxidise, and which ingredients carry that.", i => BlendOxidation.Of(i.Blend));
}
