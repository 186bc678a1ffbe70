using Materia.Chemistry;

namespace Materia.Formulation.Batches;

/// <summary>The arithmetic of the weights.</summary>
internal static class BatchSteps
{
    public static IReadOnlyList<ExplainedStep> Of(NormalisedFormula formula, BatchBasis basis, IReadOnlyList<long> parts, long steps)
    {
        var batch = formula.Batch!;
        var (resolution, unit) = (Fault.Text(batch.ScaleResolution), batch.Unit.Word);
        List<ExplainedStep> explained =
        [
            new()
            {
                What = "steps of the scale in the batch",
                Equation = "N = batch mass / scale resolution",
                Arithmetic = $"{Fault.Text(steps * batch.ScaleResolution)} {unit} / {resolution} {unit} = {steps}",
            },
        ];
        if (basis.By != "mass")
        {
            explained.Insert(0, new()
            {
                What = "mass to weigh in",
                Equation = "by volume m = V ρ; by jars m = n V (1 − headspace/100) ρ / (1 − loss/100), or n m(jar) / (1 − loss/100); rounded up to the scale",
                Arithmetic = basis.Text,
            });
        }

        foreach (var (line, part) in formula.Lines.Zip(parts))
        {
            var owed = line.Percent * steps / 100;
            explained.Add(new ExplainedStep
            {
                What = $"weight of {line.Material}",
                Equation = "n = percent × N / 100, whole steps first, the steps left over to the largest remainders; mass = n × scale resolution",
                Arithmetic = $"{Fault.Text(line.Percent)} × {steps} / 100 = {Fault.Text(decimal.Round(owed, 4))}, given {part}; {part} × {resolution} {unit} = {Fault.Text(part * batch.ScaleResolution)} {unit}",
            });
        }

        return explained;
    }
}
