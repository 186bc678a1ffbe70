using System.Text.Json.Serialization;
using Materia.Catalogue;

namespace Materia.Seed.Reporting;

/// <summary>How many statements have which grade.</summary>
public sealed record GradeCounts
{
    /// <summary>Read in the source named.</summary>
    public required int Published { get; init; }

    /// <summary>Read in a work that cites it.</summary>
    public required int Secondary { get; init; }

    /// <summary>Trade knowledge.</summary>
    public required int CommonPractice { get; init; }

    /// <summary>Recalled.</summary>
    public required int Memory { get; init; }

    /// <summary>All of them.</summary>
    public required int Total { get; init; }

    /// <summary>Share of published and secondary ones [%], to one decimal; absent where there is none at all.</summary>
    public decimal? Sourced => Percent(Published + Secondary);

    /// <summary>How many have a grade.</summary>
    [JsonIgnore]
    public int this[Evidence grade] => grade switch
    {
        Evidence.Published => Published,
        Evidence.Secondary => Secondary,
        Evidence.CommonPractice => CommonPractice,
        _ => Memory,
    };

    /// <summary>Counts the grades of <paramref name="statements"/>.</summary>
    public static GradeCounts Of(IEnumerable<Statement> statements)
    {
        var counts = new int[4];
        foreach (var statement in statements)
        {
            counts[(int)statement.Evidence]++;
        }

        return new GradeCounts
        {
            Published = counts[(int)Evidence.Published],
            Secondary = counts[(int)Evidence.Secondary],
            CommonPractice = counts[(int)Evidence.CommonPractice],
            Memory = counts[(int)Evidence.Memory],
            Total = counts.Sum(),
        };
    }

    /// <summary>The share of <paramref name="part"/> in the total [%], to one decimal; absent where the total is 0.</summary>
    /// <remarks>The added zero gives a whole per cent its decimal: 50.0.</remarks>
    public decimal? Percent(int part) => Total == 0 ? null : Math.Round(100m * part / Total, 1, MidpointRounding.AwayFromZero) + 0.0m;
}
