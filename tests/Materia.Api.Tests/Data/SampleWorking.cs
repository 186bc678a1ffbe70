using Materia.Catalogue;
using static Materia.Api.Tests.Data.SampleContent;

namespace Materia.Api.Tests.Data;

/// <summary>What <see cref="SampleContent"/> says about working with its butter. Made up, but for the CAS number.</summary>
internal static class SampleWorking
{
    public const string GroupId = "sample-group";

    public static SubstitutionGroup Group() => new()
    {
        Id = GroupId,
        Name = "Sample group",
        Description = "Stands in for any group.",
        Evidence = Evidence.Secondary,
        Source = Table,
        Note = "Made up.",
    };

    public static Ingredient Add(Ingredient butter) => butter with
    {
        Description = new Description { Text = "Is made up, “quoted” and é.", Evidence = Evidence.CommonPractice, Source = Recalled },
        Charge = new ChargeStatement { Charge = IonicCharge.Amphoteric, Evidence = Evidence.Published, Source = Table, Locator = "p. 3" },
        Parts =
        [
            new CompositePart { InciName = "Glycerin", Cas = "56-81-5", Low = 9m, Typical = 10.0m, High = 100m, Evidence = Evidence.Memory, Source = Recalled, CheckIn = Table },
            new CompositePart { InciName = "Cera Ficta", Ingredient = "a-wax-out-of-order", Evidence = Evidence.Memory, Source = Recalled },
        ],
        UsageLevels =
        [
            new UsageLevel { Use = "sample-mask", Low = 0m, Typical = 5.0m, High = 10m, Evidence = Evidence.CommonPractice, Source = Recalled },
            new UsageLevel { Use = "sample-balm", High = 0.50m, Evidence = Evidence.CommonPractice, Source = Recalled },
        ],
        Handling =
        [
            new HandlingNote { Topic = HandlingTopic.Storage, Text = "Keep it in the head.", Evidence = Evidence.CommonPractice, Source = Recalled },
            new HandlingNote { Topic = HandlingTopic.Phase, Phase = ProcessPhase.CoolDown, Text = "Stir it in late.", Evidence = Evidence.CommonPractice, Source = Recalled },
        ],
        SubstitutionGroups =
        [
            new SubstitutionMembership { Group = GroupId, Reference = true, Text = "It is the reference.", Evidence = Evidence.Secondary, Source = Table },
        ],
        BodyNotes = [new BodyNote { Subject = BodySubject.Scalp, Text = "Nothing was seen.", Evidence = Evidence.Published, Source = Table, Locator = "p. 4", Note = "Nobody looked." }],
    };
}
