namespace Materia.Regulation.Contents;

/// <summary>A substance or a part in a material.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="CasNumbers">Its CAS numbers.</param>
/// <param name="InciNames">Its INCI names in capitals.</param>
/// <param name="Ingredient">The id of the catalogue ingredient that it is as a whole, where it is one.</param>
/// <param name="Share">Its share of the material [%].</param>
internal sealed record ContentShare(string Name, IReadOnlyList<string> CasNumbers, IReadOnlyList<string> InciNames, string? Ingredient, Amount Share);
