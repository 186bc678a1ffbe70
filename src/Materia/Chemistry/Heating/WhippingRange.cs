using Materia.Catalogue;

namespace Materia.Chemistry.Heating;

/// <summary>
/// The solid content at which a fat takes and holds air. A trade journal gives 10 to 25 % at working temperature as the plastic range of
/// shortenings; a cookery handbook aerates butter at 18 °C and shortening at 24 to 27 °C, where specifications of shortenings ask for 13 to 22 %. The 10 and the 25 are printed; how far each may shift is common practice.
/// </summary>
public static class WhippingRange
{
    /// <summary>The solid content below which air runs out again [%].</summary>
    public static SourcedFigure Least { get; } = new("least solid content that holds air", 10, 8, 13, Units.Percent, Evidence.Published, "foodreview-shortening-2017", "solid fat content at working temperature; the range about it is common practice");

    /// <summary>The solid content above which it breaks into lumps rather than taking air [%].</summary>
    public static SourcedFigure Most { get; } = new("greatest solid content that takes air", 25, 22, 30, Units.Percent, Evidence.Published, "foodreview-shortening-2017", "solid fat content at working temperature; the range about it is common practice");

    /// <summary>The solid content to chill to, so that there is room on both sides [%].</summary>
    public static SourcedFigure Aim { get; } = SourcedFigure.Practice("solid content to chill to before whipping", 19, 15, 22, Units.Percent);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SourcedFigure> All { get; } = [Least, Most, Aim];
}
