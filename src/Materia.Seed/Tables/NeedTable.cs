using Materia.Catalogue;
using Materia.Catalogue.Needs;

namespace Materia.Seed.Tables;

/// <summary>The table of needs; what follows from each stands in <see cref="EffectsPath"/>.</summary>
internal static class NeedTable
{
    /// <summary>Its path in the seed directory.</summary>
    public const string Path = "tables/needs.csv";

    /// <summary>The path of the table of effects.</summary>
    public const string EffectsPath = "tables/need-effects.csv";

    /// <summary>Its columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["id", "name", "subject", "opposes", "text", "evidence", "source", "locator", "check_in", "note"];

    /// <summary>The columns of the table of effects.</summary>
    public static IReadOnlyList<string> EffectColumns { get; } =
    [
        "need", "kind", "property", "temperature", "acid", "low", "high", "weight", "scope", "reason",
        "evidence", "source", "locator", "check_in", "note",
    ];

    /// <summary>Makes the record of a row, without its effects.</summary>
    public static Need Row(TableRow row) => new()
    {
        Id = row.Required("id"),
        Name = row.Required("name"),
        Subject = row.Word<NeedSubject>("subject"),
        Opposes = row.Text("opposes"),
        Text = row.Required("text"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    };

    /// <summary>Makes the record of a row of effects.</summary>
    public static OwnedEffect EffectRow(TableRow row) => new(row.Required("need"), new NeedEffect
    {
        Kind = row.Word<NeedEffectKind>("kind"),
        Property = row.Text("property") is null ? null : row.Word<TargetProperty>("property"),
        Temperature = row.Number("temperature"),
        Acid = row.Text("acid"),
        Low = row.Number("low"),
        High = row.Number("high"),
        Weight = row.Number("weight"),
        Scope = row.Text("scope"),
        Reason = row.Required("reason"),
        Evidence = row.Word<Evidence>("evidence"),
        Source = row.Required("source"),
        Locator = row.Text("locator"),
        CheckIn = row.Text("check_in"),
        Note = row.Text("note"),
    });
}

/// <summary>A row of the table of effects.</summary>
/// <param name="Need">The key of the need.</param>
/// <param name="Effect">What follows from it.</param>
internal sealed record OwnedEffect(string Need, NeedEffect Effect);
