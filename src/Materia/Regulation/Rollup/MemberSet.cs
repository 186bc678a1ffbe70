using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Rollup;

/// <summary>What counts together: the members of one or several limits and allergens that name the same things.</summary>
/// <param name="Ordinal">Its place among the sets of a release.</param>
/// <param name="Members">The members; something that answers to several of them counts once, for the first.</param>
/// <param name="Except">Ids of ingredients that are not meant.</param>
/// <param name="MayBeUnstated">Whether natural materials may hold it without saying so: fragrance substances.</param>
internal sealed record MemberSet(int Ordinal, IReadOnlyList<RegulatedMember> Members, IReadOnlyList<string> Except, bool MayBeUnstated);
