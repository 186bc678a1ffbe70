using System.Security.Cryptography;
using System.Text;
using Materia.Tests.Checks;

namespace Materia.Tests.Search.Judgements;

/// <summary>A query and the ingredient that a maker who types it means, decided before any search answered it.</summary>
/// <param name="Class">What is hard about it, such as <c>sound</c>.</param>
/// <param name="Query">What is typed; for the class <c>property</c>, the query string of a search.</param>
/// <param name="Expected">The id of the ingredient meant.</param>
internal sealed record Judgement(string Class, string Query, string Expected)
{
    private static readonly Lazy<IReadOnlyList<Judgement>> Read = new(() =>
        [.. CheckFiles.Read(Path.Combine("..", "Search", "Judgements", "judgements.csv"), r => new Judgement(r["class"], r["query"], r["expected"]))]);

    /// <summary>All judgements.</summary>
    public static IReadOnlyList<Judgement> All => Read.Value;

    /// <summary>True for the half on which the search may be tuned; the other half only reports. A hash of the query decides.</summary>
    public bool IsForTuning => (SHA256.HashData(Encoding.UTF8.GetBytes(Query))[0] & 1) == 0;
}
