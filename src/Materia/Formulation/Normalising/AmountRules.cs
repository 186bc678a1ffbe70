namespace Materia.Formulation.Normalising;

/// <summary>How the lines of a formula give their amounts.</summary>
internal enum AmountWays
{
    /// <summary>Every line has a percentage.</summary>
    Percent,

    /// <summary>Every line has a mass.</summary>
    Mass,

    /// <summary>One line is the balance of percentages.</summary>
    Balance,
}

/// <summary>Checks the amount of each line, and that all lines give theirs in one way.</summary>
internal sealed class AmountRules(FaultList faults)
{
    /// <summary>A thousand tonnes [g]: no batch of this trade comes near it.</summary>
    public const decimal GreatestMass = 1_000_000_000m;

    private int? firstPercent;
    private int? firstMass;
    private int? firstBalance;

    /// <summary>Checks all lines and adds each fault; the answer counts only when there was none.</summary>
    public AmountWays Check(IReadOnlyList<FormulaLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            Check(lines[i], i, $"/lines/{i}");
        }

        return firstMass is not null ? AmountWays.Mass : firstBalance is not null ? AmountWays.Balance : AmountWays.Percent;
    }

    private void Check(FormulaLine line, int index, string pointer)
    {
        if (line.Unit is not null && line.Mass is null)
        {
            faults.Add($"{pointer}/unit", "A unit stands beside a mass only. Give \"mass\" instead of the percentage, or leave the unit out.");
        }

        switch (line)
        {
            case { Balance: true, Percent: null, Mass: null }:
                CheckBalance(index, pointer);
                break;
            case { Balance: true }:
                faults.Add(line.Percent is null ? $"{pointer}/mass" : $"{pointer}/percent", "The balance line takes what the others leave, so it has no amount of its own. Leave out the amount or \"balance\".");
                break;
            case { Percent: not null, Mass: not null }:
                faults.Add($"{pointer}/mass", "Give this line's percent or its mass, not both.");
                break;
            case { Percent: { } percent }:
                CheckPercent(percent, index, pointer);
                break;
            case { Mass: { } mass }:
                CheckMass(mass, line.Unit, index, pointer);
                break;
            default:
                faults.Add($"{pointer}/percent", "This line has no amount. Give \"percent\", or \"mass\" with a \"unit\" on every line, or \"balance\": true on the one line that fills up to 100 %.");
                break;
        }
    }

    private void CheckBalance(int index, string pointer)
    {
        if (firstBalance is { } earlier)
        {
            faults.Add($"{pointer}/balance", $"Only one line can be the balance, and /lines/{earlier} is it already. Give this line a percentage.");
        }
        else if (firstMass is { } mass)
        {
            faults.Add($"{pointer}/balance", $"A balance fills up percentages, but /lines/{mass} gives a mass. Give this line its mass and unit.");
        }

        firstBalance ??= index;
    }

    private void CheckPercent(decimal percent, int index, string pointer)
    {
        if (percent <= 0)
        {
            faults.Add($"{pointer}/percent", $"A percentage is over 0, and {Fault.Text(percent)} is not. Correct it, or leave the line out.");
        }
        else if (percent < LineAmounts.Step)
        {
            faults.Add($"{pointer}/percent", $"{Fault.Text(percent)} % is too small a share to count. Leave the line out, or correct the percentage.");
        }
        else if (percent > 100)
        {
            faults.Add($"{pointer}/percent", $"A percentage is at most 100, and {Fault.Text(percent)} is not. Correct it; if it is a mass, give \"mass\" and \"unit\" on every line.");
        }
        else if (firstMass is { } mass)
        {
            faults.Add($"{pointer}/percent", $"This line gives a percentage, but /lines/{mass} gives a mass. Use percent on every line, or mass and unit on every line.");
        }

        firstPercent ??= index;
    }

    private void CheckMass(decimal mass, string? word, int index, string pointer)
    {
        if (word is null)
        {
            faults.Add($"{pointer}/unit", "Give the unit of this mass: g, kg, mg, oz or lb.");
        }
        else if (MassUnit.Find(word) is not { } unit)
        {
            faults.Add($"{pointer}/unit", MassUnit.Refusal(word));
        }
        else if (mass > GreatestMass / unit.Grams)
        {
            faults.Add($"{pointer}/mass", $"{Fault.Text(mass)} {unit.Word} is more than a thousand tonnes. Correct the mass or its unit.");
        }

        if (mass <= 0)
        {
            faults.Add($"{pointer}/mass", $"A mass is over 0, and {Fault.Text(mass)} is not. Correct it, or leave the line out.");
        }

        if ((firstPercent ?? firstBalance) is { } other)
        {
            var what = firstPercent is null ? "is the balance of percentages" : "gives a percentage";
            faults.Add($"{pointer}/mass", $"This line gives a mass, but /lines/{other} {what}. Use percent on every line, or mass and unit on every line.");
        }

        firstMass ??= index;
    }
}
