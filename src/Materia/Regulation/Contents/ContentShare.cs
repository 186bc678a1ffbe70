using Materia.Regulation.Lookup;

namespace Materia.Regulation.Contents;

/// <summary>A material, a part or a substance in it, with the keys by which a rule may name it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Keys">CAS numbers, INCI names in capitals, and the id of an ingredient, see <see cref="ContentKeys"/>.</param>
/// <param name="As">Where it stands in the material.</param>
/// <param name="Share">Its share of the material as it is stated [%].</param>
/// <param name="Most">The share that it can have at most [%]; above the stated one where no upper end is stated.</param>
internal sealed record ContentShare(string Name, IReadOnlyList<string> Keys, MatchedAs As, Amount Share, decimal Most);
