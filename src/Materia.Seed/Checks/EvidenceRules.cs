using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>
/// What each grade asks for: <c>published</c> a locator, <c>memory</c> a source that is a recollection (and nothing else
/// rests on one), and <c>checkIn</c> a work that can be opened.
/// </summary>
internal static class EvidenceRules
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var kinds = new Dictionary<string, SourceKind>(StringComparer.Ordinal);
        foreach (var (source, _) in seed.Sources)
        {
            kinds[source.Id] = source.Kind;
        }

        foreach (var (statement, place) in Statements.Of(seed))
        {
            if (statement.Evidence == Evidence.Published && string.IsNullOrWhiteSpace(statement.Locator))
            {
                faults.Add(place, "published without a locator; say where in the source it stands, or lower the grade");
            }

            if (kinds.TryGetValue(statement.Source, out var kind))
            {
                CheckRecollection(statement, kind, place, faults);
            }

            if (statement.CheckIn is { } work && kinds.TryGetValue(work, out var workKind) && workKind is SourceKind.Recollection or SourceKind.TradePractice)
            {
                faults.Add(place, $"checkIn \"{work}\" is no work that can be opened; name the work in which to look it up");
            }
        }
    }

    private static void CheckRecollection(Statement statement, SourceKind kind, Place place, FaultList faults)
    {
        if (statement.Evidence == Evidence.Memory && kind != SourceKind.Recollection)
        {
            faults.Add(place, $"memory with the source \"{statement.Source}\"; the source of a recalled statement is a recollection, the work to look it up in goes to checkIn");
        }
        else if (statement.Evidence != Evidence.Memory && kind == SourceKind.Recollection)
        {
            faults.Add(place, $"{KebabCase<Evidence>.Word(statement.Evidence)} with the recollection \"{statement.Source}\" as source; name the source or grade it memory");
        }
    }
}
