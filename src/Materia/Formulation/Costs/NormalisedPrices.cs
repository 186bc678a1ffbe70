namespace Materia.Formulation.Costs;

/// <summary>The prices of a formula, all in one currency.</summary>
/// <param name="Currency">The currency.</param>
/// <param name="ByMaterial">The price of each material, by what results call it.</param>
/// <param name="Packaging">What goes with each jar.</param>
/// <param name="Notes">What was taken otherwise than it was written, in sentences.</param>
public sealed record NormalisedPrices(
    Currency Currency, IReadOnlyDictionary<string, MaterialPrice> ByMaterial, IReadOnlyList<PackagingPrice> Packaging, IReadOnlyList<string> Notes);

/// <summary>What a material costs: exactly one of the two amounts is set.</summary>
/// <param name="Price">What the amount costs.</param>
/// <param name="Grams">The mass that it buys [g].</param>
/// <param name="Millilitres">The volume that it buys [mL].</param>
public sealed record MaterialPrice(decimal Price, decimal? Grams, decimal? Millilitres);

/// <summary>What one piece of packaging costs.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Each">The price of one piece, not rounded.</param>
public sealed record PackagingPrice(string Name, decimal Each);
