namespace Materia.Formulation.Neighbours;

/// <summary>
/// How far apart what two ingredients are for lies, in the same steps as the properties. Sharing a substitution group is the closest;
/// the more of the asked one's jobs a candidate can do, the closer.
/// </summary>
internal static class Purpose
{
    /// <summary>Steps for jobs that are not shared, when at least one is.</summary>
    private const double UnsharedJobs = 1;

    /// <summary>Steps without a shared job.</summary>
    private const double NoSharedJob = 2;

    /// <summary>Steps for another kind of material.</summary>
    private const double OtherKind = 0.75;

    /// <summary>Steps for functions of the inventory that are not shared.</summary>
    private const double UnsharedFunctions = 0.5;

    /// <summary>Functions that nearly everything has say nothing; two that are shared make a candidate even of another kind.</summary>
    private const int EnoughFunctions = 3;

    /// <summary>The steps, or <see langword="null"/> when the two have nothing to do with each other.</summary>
    public static double? Gap(NeighbourVector asked, NeighbourVector candidate)
    {
        var jobs = Shared(asked.Groups, candidate.Groups);
        var functions = Shared(asked.Functions, candidate.Functions);
        var sameKind = asked.Ingredient.Kind == candidate.Ingredient.Kind;
        if (jobs == 0 && !sameKind && functions < EnoughFunctions)
        {
            return null;
        }

        var all = asked.Functions.Length + candidate.Functions.Length - functions;
        var gap = jobs > 0 ? UnsharedJobs * (1 - ((double)jobs / asked.Groups.Length)) : NoSharedJob;
        gap += sameKind ? 0 : OtherKind;
        return gap + (UnsharedFunctions * (all == 0 ? 1 : 1 - ((double)functions / all)));
    }

    private static int Shared(string[] a, string[] b)
    {
        var shared = 0;
        foreach (var word in a)
        {
            shared += Array.IndexOf(b, word) >= 0 ? 1 : 0;
        }

        return shared;
    }
}
