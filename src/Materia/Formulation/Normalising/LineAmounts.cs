using Materia.Formulation.Batches;

namespace Materia.Formulation.Normalising;

/// <summary>Works out the percentages of the lines from whichever amounts they give.</summary>
internal static class LineAmounts
{
    /// <summary>How far a sum of percentages may be from 100 and still be taken as rounding [percentage points].</summary>
    public const decimal SumTolerance = 0.01m;

    /// <summary>Decimal places of a percentage that had to be divided: fine enough for a milligram in a thousand tonnes.</summary>
    private const int Places = 10;

    /// <summary>The smallest percentage that counts [%].</summary>
    public static readonly decimal Step = new(1, 0, 0, false, Places);

    /// <summary>The percentages in the order of the lines, which add up to exactly 100; <see langword="null"/> when they cannot be told, with the faults added.</summary>
    public static IReadOnlyList<decimal>? Percentages(IReadOnlyList<FormulaLine> lines, FaultList faults, List<string> notes)
    {
        var before = faults.Count;
        var ways = new AmountRules(faults).Check(lines);
        if (faults.Count > before)
        {
            return null;
        }

        return ways switch
        {
            AmountWays.Mass => ByMass(lines, faults),
            AmountWays.Percent => ByPercent(lines, faults, notes),
            _ => WithBalance(lines, faults),
        };
    }

    private static decimal[]? ByMass(IReadOnlyList<FormulaLine> lines, FaultList faults) =>
        Scaled([.. lines.Select(l => l.Mass!.Value * MassUnit.Find(l.Unit!)!.Grams)], "mass", faults);

    private static decimal[]? ByPercent(IReadOnlyList<FormulaLine> lines, FaultList faults, List<string> notes)
    {
        decimal[] percents = [.. lines.Select(l => l.Percent!.Value)];
        var sum = percents.Sum();
        if (sum == 100)
        {
            return percents;
        }

        if (Math.Abs(sum - 100) <= SumTolerance)
        {
            notes.Add($"The percentages add up to {Fault.Text(sum)} %; they were scaled to 100 %.");
            return Scaled(percents, "percent", faults);
        }

        var difference = sum < 100 ? $"{Fault.Text(100 - sum)} points are missing" : $"that is {Fault.Text(sum - 100)} points too many";
        faults.Add("/lines", $"The percentages add up to {Fault.Text(sum)}; {difference}. Correct them, or put \"balance\": true in place of the percentage of the one line that fills up to 100. If the numbers are parts, give every line its \"mass\" and \"unit\" instead.");
        return null;
    }

    private static decimal[]? WithBalance(IReadOnlyList<FormulaLine> lines, FaultList faults)
    {
        var sum = lines.Sum(l => l.Percent ?? 0);
        var rest = 100 - sum;
        if (rest > 0)
        {
            return [.. lines.Select(l => l.Percent ?? rest)];
        }

        var balance = lines.Index().First(l => l.Item.Balance == true).Index;
        faults.Add($"/lines/{balance}/balance", $"The other lines add up to {Fault.Text(sum)} %, so nothing is left for the balance. Lower them by more than {Fault.Text(-rest)} points, or leave this line out.");
        return null;
    }

    private static decimal[]? Scaled(decimal[] amounts, string member, FaultList faults)
    {
        var percents = LargestRemainder.Apportion(amounts, (long)(100 / Step)).Select(units => units * Step).ToArray();
        for (var i = 0; i < percents.Length; i++)
        {
            if (percents[i] == 0)
            {
                faults.Add($"/lines/{i}/{member}", "This amount is too small beside the others to count. Leave the line out, or correct the amount and its unit.");
            }
        }

        return Array.TrueForAll(percents, p => p > 0) ? percents : null;
    }
}
