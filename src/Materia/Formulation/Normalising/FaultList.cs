namespace Materia.Formulation.Normalising;

/// <summary>Gathers faults, so that one answer names all of them.</summary>
internal sealed class FaultList
{
    /// <summary>More than this many help nobody: what follows is left out.</summary>
    public const int Limit = 50;

    private readonly List<FormulaFault> faults = [];

    public IReadOnlyList<FormulaFault> All => faults;

    /// <summary>How many faults there are, those that were left out included.</summary>
    public int Count { get; private set; }

    public bool Any => Count > 0;

    public void Add(string pointer, string message) => Add(new FormulaFault(pointer, message));

    public void Add(FormulaFault fault)
    {
        Count++;
        if (faults.Count < Limit)
        {
            faults.Add(fault);
        }
    }

    /// <summary>Adds a fault when <paramref name="value"/> is given and lies outside the bounds, which are allowed themselves.</summary>
    /// <returns>True when there is nothing to object to.</returns>
    public bool Within(string pointer, decimal? value, decimal low, decimal high, string what)
    {
        if (value is null || (value >= low && value <= high))
        {
            return true;
        }

        Add(pointer, $"{what} must be from {Fault.Text(low)} to {Fault.Text(high)}, and {Fault.Text(value.Value)} is not.");
        return false;
    }

    /// <summary>Adds a fault when <paramref name="text"/> is longer than a name should be.</summary>
    public void Short(string pointer, string? text)
    {
        if (text is { Length: > Fault.LongestText })
        {
            Add(pointer, $"This text has {text.Length} characters; shorten it to {Fault.LongestText}.");
        }
    }
}
