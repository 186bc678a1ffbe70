using Materia.Catalogue;
using Materia.Catalogue.Needs;

namespace Materia.Api.Tests.Data;

/// <summary>Made-up needs with every sort of effect.</summary>
internal static class SampleNeeds
{
    public static IReadOnlyList<Need> Create() =>
    [
        new Need
        {
            Id = "sample-need",
            Name = "Sample need",
            Subject = NeedSubject.Climate,
            Text = "Made up.",
            Opposes = "other-need",
            Evidence = Evidence.CommonPractice,
            Source = SampleContent.Recalled,
            Effects =
            [
                Effect(NeedEffectKind.Target) with { Property = TargetProperty.SolidContent, Temperature = 32.5m, Low = 1.50m, High = 3m, Weight = 2m },
                Effect(NeedEffectKind.Target) with { Property = TargetProperty.FattyAcid, Acid = "18:1n-9", High = 40m, Weight = 0.5m },
                Effect(NeedEffectKind.Prefer) with { Scope = "kind:butter" },
                Effect(NeedEffectKind.Avoid) with { Scope = "kind:wax" },
                Effect(NeedEffectKind.Exclude) with { Scope = "origin:animal" },
                Effect(NeedEffectKind.Caution) with { Evidence = Evidence.Published, Source = SampleContent.Table, Locator = "p. 3", Note = "A note." },
            ],
        },
        new Need
        {
            Id = "other-need",
            Name = "Other need",
            Subject = NeedSubject.Strands,
            Text = "Made up too.",
            Evidence = Evidence.CommonPractice,
            Source = SampleContent.Recalled,
        },
    ];

    private static NeedEffect Effect(NeedEffectKind kind) => new()
    {
        Kind = kind,
        Reason = "Because of nothing.",
        Evidence = Evidence.Memory,
        Source = SampleContent.Recalled,
        CheckIn = SampleContent.Table,
    };
}
