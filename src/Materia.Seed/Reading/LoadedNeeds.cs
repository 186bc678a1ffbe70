using Materia.Catalogue.Needs;
using Materia.Seed.Tables;

namespace Materia.Seed.Reading;

/// <summary>What could be read of the tables of needs, each row with its place.</summary>
internal sealed record LoadedNeeds
{
    /// <summary>The needs, without their effects, in the order of the table.</summary>
    public required TableRows<Need> Needs { get; init; }

    /// <summary>What follows from them.</summary>
    public required TableRows<OwnedEffect> Effects { get; init; }

    /// <summary>The paths of the two tables.</summary>
    public static IReadOnlyList<string> Paths { get; } = [NeedTable.Path, NeedTable.EffectsPath];

    /// <summary>True when every row of both could be read.</summary>
    public bool IsComplete => Needs.IsComplete && Effects.IsComplete;

    /// <summary>Reads both tables; what cannot be read is added to <paramref name="faults"/>.</summary>
    public static LoadedNeeds Load(string directory, FaultList faults) => new()
    {
        Needs = TableFile.Read(directory, NeedTable.Path, NeedTable.Columns, NeedTable.Row, faults),
        Effects = TableFile.Read(directory, NeedTable.EffectsPath, NeedTable.EffectColumns, NeedTable.EffectRow, faults),
    };

    /// <summary>The needs with their effects.</summary>
    public IReadOnlyList<Need> Whole()
    {
        var effects = Effects.Rows.ToLookup(e => e.Value.Need, e => e.Value.Effect, StringComparer.Ordinal);
        return [.. Needs.Rows.Select(n => n.Value with { Effects = [.. effects[n.Value.Id]] })];
    }
}
