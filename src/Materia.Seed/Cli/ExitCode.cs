namespace Materia.Seed.Cli;

/// <summary>What the command line answers to its caller.</summary>
public static class ExitCode
{
    /// <summary>Done, with nothing to complain of.</summary>
    public const int Done = 0;

    /// <summary>The data has faults; nothing was loaded.</summary>
    public const int Faults = 1;

    /// <summary>The command was not understood.</summary>
    public const int Usage = 2;
}
