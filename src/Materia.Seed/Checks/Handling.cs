using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Notes on handling: the one about the phase names it, the others do not, and there is one about the phase at most.</summary>
internal static class Handling
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            var phases = 0;
            foreach (var (note, at) in Statements.Items(ingredient.Handling, place, "handling"))
            {
                var isAboutPhase = note.Topic == HandlingTopic.Phase;
                if (isAboutPhase && note.Phase is null)
                {
                    faults.Add(at, $"a note on the phase that names none; add \"phase\", one of {string.Join(", ", KebabCase<ProcessPhase>.Words)}");
                }
                else if (!isAboutPhase && note.Phase is not null)
                {
                    faults.Add(at, $"\"phase\" on a note on {KebabCase<HandlingTopic>.Word(note.Topic)}; move it to the note on the phase");
                }

                if (isAboutPhase && ++phases == 2)
                {
                    faults.Add(at, "a second note on the phase; keep the phase that the ingredient usually goes into and say the rest in its text");
                }
            }
        }
    }
}
