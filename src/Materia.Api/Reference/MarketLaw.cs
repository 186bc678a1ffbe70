using Materia.Api.Http;
using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Formulation;

namespace Materia.Api.Reference;

/// <summary>Whose rules count in a market.</summary>
internal static class MarketLaw
{
    /// <summary>The query parameter that names a market.</summary>
    /// <param name="description">What it does in the call.</param>
    public static QueryParameter Parameter(string description) => new("market", description) { Words = KebabCase<Market>.Words, Example = "eu" };

    /// <summary>The market that a call names, or <see langword="null"/>; faults are noted.</summary>
    public static Market? Read(QueryReader reader, RequestFaults faults)
    {
        var markets = reader.Words<Market>("market");
        if (markets.Count > 1)
        {
            faults.Add("?market", "market takes one word; keep one.");
        }

        return markets.Count == 0 ? null : markets[0];
    }

    /// <summary>
    /// The law of the market, the trade's standards and opinions. Great Britain took the European regulation over and amends it by
    /// itself, so that both stand side by side there.
    /// </summary>
    public static IReadOnlyList<Authority> Of(Market market) => market switch
    {
        Market.Uk => [Authority.Gb, Authority.Eu, Authority.Ifra, Authority.Opinion],
        Market.Us => [Authority.Us, Authority.Ifra, Authority.Opinion],
        _ => [Authority.Eu, Authority.Ifra, Authority.Opinion],
    };
}
