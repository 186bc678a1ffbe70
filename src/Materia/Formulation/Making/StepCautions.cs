using Materia.Regulation.Cautioning;

namespace Materia.Formulation.Making;

/// <summary>Which of the formula's cautions belong to which step.</summary>
internal sealed class StepCautions(IReadOnlyList<CautionFinding> findings)
{
    private static readonly string[] Heat = [MakingCautions.HotFat];
    private static readonly string[] Powder = [MakingCautions.QuartzDust, MakingCautions.Dust, MakingCautions.TalcDust];
    private static readonly string[] Acids = [MakingCautions.StrongAlkali, MakingCautions.StrongAcid];
    private static readonly string[] Volatile = [MakingCautions.Fire, MakingCautions.UndilutedOils];

    /// <summary>The cautions of a step of this stage.</summary>
    public IReadOnlyList<StepCaution> Of(MakingStage stage) => stage switch
    {
        MakingStage.Melt => Of(Heat),
        MakingStage.Emulsify => Of([MakingCautions.Steam]),
        MakingStage.Powder => Of(Powder),
        MakingStage.Water or MakingStage.Check => Of(Acids),
        MakingStage.CoolDown => Of(Volatile),
        MakingStage.Set => Of([MakingCautions.OilyRags]),
        _ => [],
    };

    private StepCaution[] Of(string[] hazards) =>
        [.. findings.Where(f => hazards.Contains(f.Hazard)).Select(f => new StepCaution($"{Words.Upper(f.Hazard)}: {f.WhatToDo}", f.Evidence, f.Source, f.Locator, f.CheckIn))];
}
