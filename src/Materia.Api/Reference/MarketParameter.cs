using Materia.Api.Http;
using Materia.Catalogue;
using Materia.Formulation;

namespace Materia.Api.Reference;

/// <summary>The query parameter that names a market.</summary>
internal static class MarketParameter
{
    /// <summary>The parameter.</summary>
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
}
