using Materia.Regulation.Contents;

namespace Materia.Regulation.Rollup;

/// <summary>
/// The lines whose materials may hold substances that no statement names. Their total is added up once; a set takes off the few lines
/// of which it knows more.
/// </summary>
internal sealed class OpenLines
{
    private readonly RegulatedFormula formula;
    private readonly List<int> lines = [];
    private readonly decimal[] most;
    private readonly decimal total;

    /// <summary>Finds them.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="fractions">The share of each line as a fraction of 1.</param>
    /// <param name="open">How much of a material may be such substances [%].</param>
    public OpenLines(RegulatedFormula formula, decimal[] fractions, Func<IngredientContents, decimal> open)
    {
        this.formula = formula;
        most = new decimal[fractions.Length];
        for (var i = 0; i < fractions.Length; i++)
        {
            most[i] = fractions[i] * open(formula.Contents[i]);
            if (most[i] > 0)
            {
                lines.Add(i);
                total += most[i];
            }
        }
    }

    /// <summary>The most that these lines may hold of a set unsaid [% of the formula], beside those that state it; adds their names to <paramref name="unstated"/>.</summary>
    public decimal Besides(List<LineMatch> matches, MemberSet set, List<string> unstated)
    {
        var rest = total;
        var next = 0;
        foreach (var i in lines)
        {
            // Both lists run in the order of the lines.
            while (next < matches.Count && matches[next].Line < i)
            {
                next++;
            }

            if ((next < matches.Count && matches[next].Line == i) || set.Except.Contains(formula.Lines[i].Ingredient.Id, StringComparer.Ordinal))
            {
                rest -= most[i];
            }
            else
            {
                unstated.Add(formula.Lines[i].Name);
            }
        }

        return rest;
    }
}
