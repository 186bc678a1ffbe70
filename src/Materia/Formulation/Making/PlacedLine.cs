using Materia.Catalogue;
using Materia.Chemistry.Materials;

namespace Materia.Formulation.Making;

/// <summary>A line of the formula in its phase.</summary>
/// <param name="Index">Its place in the formula, from 0.</param>
/// <param name="Line">The line.</param>
/// <param name="Traits">What its records say for making.</param>
/// <param name="Phase">The phase.</param>
/// <param name="Because">Why.</param>
/// <param name="Evidence">How that was seen; <see langword="null"/> where the maker decided it.</param>
/// <param name="Source">The key of the source.</param>
internal sealed record PlacedLine(int Index, NormalisedLine Line, MakingTraits Traits, ProcessPhase Phase, string Because, Evidence? Evidence, string Source)
{
    public string Name => Line.Name ?? Line.Ingredient.CommonName();

    public bool IsPowder => Kinds.IsPowder(Line.Ingredient.Kind) || (Phase == ProcessPhase.Powder && Line.Ingredient.Kind != IngredientKind.EssentialOil);

    public bool IsVolatile => Traits.FlashPoint is not null || Line.Ingredient.Kind == IngredientKind.EssentialOil;
}
