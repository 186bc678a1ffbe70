using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Grades of the rabbit-ear assay run from 0 to 5.</summary>
internal static class ComedogenicGrades
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        const string Scale = "the scale of the assay";
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (note, at) in Statements.Items(ingredient.Comedogenic, place, "comedogenic"))
            {
                new RangeOrder(note.Low, null, note.High).Check(0, 5, Scale, at, faults);
                if (note.Irritancy is { } irritancy)
                {
                    new RangeOrder(null, irritancy, null).Check(0, 5, Scale, at, faults);
                }
            }
        }
    }
}
