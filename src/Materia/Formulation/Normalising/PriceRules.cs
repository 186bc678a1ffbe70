using Materia.Catalogue;
using Materia.Formulation.Costs;

namespace Materia.Formulation.Normalising;

/// <summary>Checks prices: known materials, one price for each, one currency for all.</summary>
internal sealed class PriceRules(Release release, FaultList faults)
{
    /// <summary>More than this for one purchase is a slip of the keys, in any currency.</summary>
    private const decimal GreatestPrice = 10_000_000_000m;

    /// <summary>A hundredth of a gram or millilitre: nobody sells less.</summary>
    private const decimal LeastAmount = 0.01m;

    private const int MostPieces = 1_000_000;

    private readonly Dictionary<string, MaterialPrice> prices = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> places = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<string> notes = [];
    private (Currency Currency, string Pointer)? currency;

    /// <summary>The prices; <see langword="null"/> when there are none or any has a fault.</summary>
    public NormalisedPrices? Check(Formula formula)
    {
        var before = faults.Count;
        if (formula.Prices.Count > NormalisedFormula.MostLines)
        {
            faults.Add("/prices", $"There are at most {NormalisedFormula.MostLines} prices, as there are lines. Send those of this formula.");
            return null;
        }

        if (formula.Packaging.Count > NormalisedFormula.MostLines)
        {
            faults.Add("/packaging", $"There are at most {NormalisedFormula.MostLines} pieces of packaging. Add up what goes together.");
            return null;
        }

        for (var i = 0; i < formula.Prices.Count; i++)
        {
            Check(formula.Prices[i], $"/prices/{i}", formula);
        }

        List<PackagingPrice> packaging = [.. formula.Packaging.Select((p, i) => Check(p, $"/packaging/{i}"))];
        return faults.Count > before || currency is null ? null : new NormalisedPrices(currency.Value.Currency, prices, packaging, notes);
    }

    private void Check(FormulaPrice price, string pointer, Formula formula)
    {
        var material = Material(price, pointer, formula);
        CheckPrice(price.Price, pointer, "this amount");
        CheckCurrency(price.Currency, pointer);
        if (Amount(price.Per, $"{pointer}/per") is { } amount && material is not null)
        {
            prices[material] = amount with { Price = price.Price ?? 0 };
        }
    }

    private PackagingPrice Check(FormulaPackaging piece, string pointer)
    {
        if (string.IsNullOrWhiteSpace(piece.Name))
        {
            faults.Add($"{pointer}/name", "Say what it is, such as \"jar with lid\" or \"label\".");
        }

        faults.Short($"{pointer}/name", piece.Name);
        CheckPrice(piece.Price, pointer, "it");
        CheckCurrency(piece.Currency, pointer);
        faults.Within($"{pointer}/pieces", piece.Pieces, 1, MostPieces, "The number of pieces");
        return new PackagingPrice(piece.Name ?? string.Empty, piece.Pieces is null or 0 ? piece.Price ?? 0 : (piece.Price ?? 0) / piece.Pieces.Value);
    }

    private string? Material(FormulaPrice price, string pointer, Formula formula)
    {
        if ((price.Ingredient is null) == (price.Own is null))
        {
            faults.Add(
                price.Own is null ? $"{pointer}/ingredient" : $"{pointer}/own",
                price.Own is null ? "Say what this is the price of: \"ingredient\" with an id of the catalogue, or \"own\" with the name of one of the formula's own materials." : "Give \"ingredient\" or \"own\", not both.");
            return null;
        }

        var (name, at) = price.Own is null ? (Known(price.Ingredient!, $"{pointer}/ingredient"), $"{pointer}/ingredient") : (Owned(price.Own, $"{pointer}/own", formula), $"{pointer}/own");
        if (name is null)
        {
            return null;
        }

        if (!places.TryAdd(name, at))
        {
            faults.Add(at, $"\"{Fault.Shorten(name)}\" has a price already (at {places[name]}). Keep one of them; for two lots at different prices describe each as an own material.");
        }

        if (price.Own is null && !formula.Lines.Any(l => l.Ingredient is { } id && (release.FindPresentId(id) ?? id) == name))
        {
            notes.Add($"\"{name}\" has a price but is not in the formula; the price was not used.");
        }

        return name;
    }

    private string? Known(string id, string pointer)
    {
        if (release.FindIngredient(id) is not null)
        {
            return id;
        }

        if (release.FindPresentId(id) is { } present)
        {
            return present;
        }

        faults.Add(new FormulaFault(pointer, $"\"{Fault.Shorten(id)}\" is not an ingredient of the catalogue. Use an ingredient's id; for a material that the formula describes itself give its name as \"own\".") { UnknownIngredient = id });
        return null;
    }

    private string? Owned(string name, string pointer, Formula formula)
    {
        var own = formula.Lines.Select(l => l.Own?.Name).OfType<string>().ToList();
        if (own.Find(n => string.Equals(n, name, StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            return found;
        }

        faults.Add(pointer, own.Count == 0
            ? "The formula describes no material of its own. Name a catalogue ingredient as \"ingredient\"."
            : $"The formula describes no material called \"{Fault.Shorten(name)}\". Its own materials are {Fault.Words(own.Take(10).Select(Fault.Shorten))}.");
        return null;
    }

    private void CheckPrice(decimal? price, string pointer, string what)
    {
        if (price is null)
        {
            faults.Add($"{pointer}/price", $"Give what {what} costs.");
        }

        faults.Within($"{pointer}/price", price, 0, GreatestPrice, "A price");
    }

    private void CheckCurrency(string? code, string pointer)
    {
        if (code is null)
        {
            faults.Add($"{pointer}/currency", "Give the currency as its ISO 4217 code, such as \"EUR\".");
        }
        else if (Currency.Find(code) is not { } found)
        {
            faults.Add($"{pointer}/currency", Currency.Refusal(code));
        }
        else if (currency is not { } first)
        {
            currency = (found, pointer);
        }
        else if (first.Currency != found)
        {
            faults.Add($"{pointer}/currency", $"This is in {found.Code}, and {first.Pointer} is in {first.Currency.Code}. No exchange rates are kept here: convert all prices to one currency at the rate that you paid, and send that.");
        }
    }

    private MaterialPrice? Amount(PricedAmount? per, string pointer)
    {
        if (per is null)
        {
            faults.Add(pointer, "Say how much this price buys, such as \"per\": { \"mass\": 1, \"unit\": \"kg\" } or { \"volume\": 100, \"unit\": \"mL\" }.");
            return null;
        }

        if ((per.Mass is null) == (per.Volume is null))
        {
            faults.Add(per.Mass is null ? $"{pointer}/mass" : $"{pointer}/volume", per.Mass is null ? "Give the mass or the volume that this price buys." : "Give the mass or the volume that this price buys, not both.");
            return null;
        }

        var (member, size) = per.Mass is { } mass ? ("mass", mass) : ("volume", per.Volume!.Value);
        var unit = per.Unit is not { } word ? null : per.Mass is null ? VolumeUnit.Find(word)?.Millilitres : MassUnit.Find(word)?.Grams;
        if (unit is null)
        {
            faults.Add($"{pointer}/unit", per.Unit is null
                ? per.Mass is null ? "Give the unit of this volume: mL or L." : "Give the unit of this mass: g, kg, mg, oz or lb."
                : per.Mass is null ? VolumeUnit.Refusal(per.Unit)
                : VolumeUnit.Find(per.Unit) is null ? MassUnit.Refusal(per.Unit) : $"\"{per.Unit}\" measures volume. Give \"volume\" in place of \"mass\", or a unit of mass: g, kg, mg, oz or lb.");
            return null;
        }

        if (size <= 0 || size < LeastAmount / unit || size > AmountRules.GreatestMass / unit)
        {
            faults.Add($"{pointer}/{member}", size <= 0 ? $"The amount that a price buys is over 0, and {Fault.Text(size)} is not." : $"Nobody sells {Fault.Text(size)} {per.Unit} at once. Correct the amount or its unit.");
            return null;
        }

        return per.Mass is null ? new MaterialPrice(0, null, size * unit) : new MaterialPrice(0, size * unit, null);
    }
}
