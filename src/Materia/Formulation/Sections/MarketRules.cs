using Materia.Catalogue.Regulated;

namespace Materia.Formulation.Sections;

/// <summary>Whose rules count in a market.</summary>
internal static class MarketRules
{
    /// <summary>
    /// The law of the market first, then the trade's standards and opinions. Great Britain took the European regulation over and
    /// amends it by itself: its own rows count first and the European ones beside them. Without a market the European Union is taken.
    /// </summary>
    public static IReadOnlyList<Authority> Of(Market? market) => market switch
    {
        Market.Us => [Authority.Us, Authority.Ifra, Authority.Opinion],
        Market.Uk => [Authority.Gb, Authority.Eu, Authority.Ifra, Authority.Opinion],
        _ => [Authority.Eu, Authority.Ifra, Authority.Opinion],
    };
}
