using System.Globalization;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Texts that are sentences end with a full stop; a description is long enough to say something and short enough to be read.</summary>
internal static class Sentences
{
    /// <summary>Least length of a description [characters]: about one short sentence.</summary>
    public const int LeastDescription = 40;

    /// <summary>Greatest length of a description [characters]: about four long sentences.</summary>
    public const int GreatestDescription = 900;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            if (ingredient.Description is { } description)
            {
                var at = place.Member("description");
                FullStop(description.Text, at, faults);
                if (description.Text.Length is < LeastDescription or > GreatestDescription)
                {
                    faults.Add(at, string.Create(CultureInfo.InvariantCulture, $"a description of {description.Text.Length} characters, not of {LeastDescription} to {GreatestDescription}; write two to four sentences"));
                }
            }

            All(Statements.Items(ingredient.Handling, place, "handling"), n => n.Text, faults);
            All(Statements.Items(ingredient.SubstitutionGroups, place, "substitutionGroups"), m => m.Text, faults);
            All(Statements.Items(ingredient.BodyNotes, place, "bodyNotes"), n => n.Text, faults);
            All(Statements.Items(ingredient.Cautions, place, "cautions"), c => c.Text, faults);
        }

        All(seed.Uses, u => u.Description, faults);
        All(seed.SubstitutionGroups, g => g.Description, faults);
        All(seed.Uses, u => u.Caution ?? "", faults);
        All(seed.Needs.Needs.Rows, n => n.Text, faults);
        All(seed.Needs.Effects.Rows, e => e.Effect.Reason, faults);
        All(seed.Regulation.Limits.Rows, l => l.Conditions ?? "", faults);
    }

    private static void All<T>(IEnumerable<Placed<T>> statements, Func<T, string> text, FaultList faults)
    {
        foreach (var (statement, at) in statements)
        {
            FullStop(text(statement), at, faults);
        }
    }

    private static void FullStop(string text, Place at, FaultList faults)
    {
        // An empty text is another check's business.
        if (text.Length > 0 && text[^1] != '.')
        {
            faults.Add(at, $"\"…{text[^Math.Min(text.Length, 20)..]}\" does not end with a full stop; write a whole sentence");
        }
    }
}
