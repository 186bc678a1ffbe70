using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace Materia.Api.Figures;

/// <summary>
/// The words of a plot that the font cannot draw wholly. They are drawn with boxes, which is all that a picture can show, and an SVG gets
/// its own words back, for which a viewer has fonts of its own.
/// </summary>
internal sealed class FigureWords
{
    private readonly Dictionary<string, Queue<string>> boxed = new(StringComparer.Ordinal);

    /// <summary>Puts boxes into the title, the labels, the ticks and the notes of a plot.</summary>
    public static FigureWords Box(Plot plot)
    {
        var words = new FigureWords();
        plot.Axes.Title.Label.Text = words.Of(plot.Axes.Title.Label.Text);
        foreach (var axis in (IEnumerable<IAxis>)[plot.Axes.Left, plot.Axes.Bottom])
        {
            if (axis.TickGenerator is NumericManual ticks && ticks.Ticks.Any(t => FigureFont.Boxed(t.Label) != t.Label))
            {
                axis.TickGenerator = new NumericManual([.. ticks.Ticks.Select(t => t.Position)], [.. ticks.Ticks.Select(t => words.Of(t.Label))]);
            }
        }

        foreach (var note in plot.GetPlottables<Text>())
        {
            note.LabelText = words.Of(note.LabelText);
        }

        return words;
    }

    /// <summary>The words that stand for what was drawn; each is given out once, in the order of drawing.</summary>
    public string Written(string drawn) => boxed.TryGetValue(drawn, out var whole) && whole.TryDequeue(out var text) ? text : drawn;

    private string Of(string text)
    {
        var drawn = FigureFont.Boxed(text);
        if (drawn != text)
        {
            if (!boxed.TryGetValue(drawn, out var whole))
            {
                boxed.Add(drawn, whole = new());
            }

            whole.Enqueue(text);
        }

        return drawn;
    }
}
