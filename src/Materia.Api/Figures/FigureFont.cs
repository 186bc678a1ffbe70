using System.Reflection;
using ScottPlot;
using SkiaSharp;

namespace Materia.Api.Figures;

/// <summary>
/// The font that figures are measured and drawn with. It comes with the program: fonts differ between machines, and a container has
/// none at all, so that a figure would have other bytes there, or no words.
/// </summary>
internal sealed class FigureFont : IFontResolver
{
    /// <summary>Its name.</summary>
    public const string Family = "DejaVu Sans";

    private const char Box = '?';

    private static readonly SKTypeface Typeface = Load();

    private FigureFont()
    {
    }

    /// <summary>Makes it known to the plotting library, before the fonts of the machine.</summary>
    public static void Register() => ScottPlot.Fonts.FontResolvers.Insert(0, new FigureFont());

    /// <summary>The text with a box in the place of each character that the font lacks; left alone, such characters would vanish.</summary>
    public static string Boxed(string text) => string.Concat(text.EnumerateRunes().Select(r => Typeface.GetGlyph(r.Value) != 0 ? r.ToString() : Box.ToString()));

    /// <summary>The width of a text [px].</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">The size of its letters [px].</param>
    public static float Width(string text, float size)
    {
        using var font = new SKFont(Typeface, size);
        return font.MeasureText(text);
    }

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => Of(fontName);

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => Of(fontName);

    private static SKTypeface? Of(string name) => name == Family ? Typeface : null;

    private static SKTypeface Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("figure-font")
            ?? throw new InvalidOperationException("The program was built without the font of its figures.");
        return SKTypeface.FromStream(stream);
    }
}
