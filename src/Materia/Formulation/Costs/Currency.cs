using System.Collections.Frozen;

namespace Materia.Formulation.Costs;

/// <summary>A currency of ISO 4217.</summary>
/// <param name="Code">The alphabetic code.</param>
/// <param name="MinorUnits">The decimals of its smallest unit: 2 for a cent, 0 where there is none.</param>
public sealed record Currency(string Code, int MinorUnits)
{
    // Codes of money that is paid with, as Debian's iso-codes lists them; precious metals, test codes and funds are left out.
    private const string Codes = """
        AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY COP
        CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR
        ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN
        MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD
        SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VED VES VND VUV WST XAF XCD XCG XOF XPF YER ZAR
        ZMW ZWG
        """;

    private const string WithoutMinorUnit = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";
    private const string WithThousandths = "BHD IQD JOD KWD LYD OMR TND";

    private static readonly FrozenDictionary<string, Currency> ByCode = Words(Codes).ToFrozenDictionary(
        c => c,
        c => new Currency(c, Words(WithoutMinorUnit).Contains(c) ? 0 : Words(WithThousandths).Contains(c) ? 3 : 2),
        StringComparer.Ordinal);

    /// <summary>The currency with this code, or <see langword="null"/>.</summary>
    public static Currency? Find(string code) => ByCode.GetValueOrDefault(code);

    /// <summary>The amount in whole minor units; halves go to the even one.</summary>
    public decimal Round(decimal amount) => decimal.Round(amount, MinorUnits, MidpointRounding.ToEven);

    /// <summary>What to say of a word that is no code.</summary>
    internal static string Refusal(string word)
    {
        var code = word.Trim() switch
        {
            "€" => "EUR",
            "£" => "GBP",
            "¥" or "$" or "kr" => null,
            var other when Find(other.ToUpperInvariant()) is { } found => found.Code,
            _ => null,
        };
        return code is null
            ? $"\"{Fault.Shorten(word)}\" is not a currency code of ISO 4217. Give three capitals, such as EUR, GBP or USD."
            : $"Write the currency as its ISO 4217 code: \"{code}\".";
    }

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
