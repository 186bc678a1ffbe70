using Materia.Chemistry;

namespace Materia.Formulation.Batches;

/// <summary>What the size of a batch was worked out from.</summary>
/// <param name="By"><c>mass</c>, <c>volume</c>, <c>jar-volume</c> or <c>jar-mass</c>.</param>
/// <param name="Text">The reckoning, in a sentence.</param>
/// <param name="Approximate">True when it hangs on a computed density.</param>
/// <param name="Density">That density [g/mL]: of the whipped product where an overrun is given.</param>
/// <param name="Low">The mass that the lower end of the density would ask for; absent when it does not hang on one.</param>
/// <param name="High">The mass that the upper end would ask for.</param>
public sealed record BatchBasis(string By, string Text, bool Approximate, TemperatureFigure? Density = null, Mass? Low = null, Mass? High = null)
{
    /// <summary>The basis with the exact mass that it asks for, in the batch's unit; <see langword="null"/> when it takes a density that is not known.</summary>
    internal static (BatchBasis Basis, decimal Mass)? Of(NormalisedBatch batch, TemperatureFigure? density)
    {
        var unit = batch.Unit;
        if (batch.Mass is { } mass)
        {
            return (new BatchBasis("mass", $"The mass asked for: {Fault.Text(mass)} {unit.Word}.", false), mass);
        }

        if (batch.Volume is null && batch is { Jars: { } count, JarMass: { } each })
        {
            var needed = count * each / Kept(batch);
            return (new BatchBasis("jar-mass", $"{count} × {Fault.Text(each)} {unit.Word}{Loss(batch)} = {Short(needed)} {unit.Word}.", false), needed);
        }

        if (density is null)
        {
            return null;
        }

        var (by, volume, text) = batch.Volume is { } asked
            ? ("volume", asked, $"{Fault.Text(asked)} mL")
            : ("jar-volume", batch.Jars!.Value * batch.JarVolume!.Value * (1 - (batch.HeadspacePercent / 100)) / Kept(batch),
                $"{batch.Jars} × {Fault.Text(batch.JarVolume.Value)} mL, {Fault.Text(batch.HeadspacePercent)} % left empty{Loss(batch)}");
        var exact = volume * (decimal)density.Value / unit.Grams;
        return (new BatchBasis(
            by, $"{text}, at {Short((decimal)density.Value)} g/mL (computed for {Fault.Text((decimal)density.Temperature)} °C): about {Short(exact)} {unit.Word}.",
            true, density, Rounded(volume * (decimal)density.Low, batch), Rounded(volume * (decimal)density.High, batch)), exact);
    }

    private static Mass Rounded(decimal grams, NormalisedBatch batch) =>
        new(decimal.Ceiling(Math.Min(grams / batch.Unit.Grams / batch.ScaleResolution, BatchPlanner.GreatestSteps)) * batch.ScaleResolution, batch.Unit.Ucum);

    private static decimal Kept(NormalisedBatch batch) => 1 - (batch.LossPercent / 100);

    private static string Loss(NormalisedBatch batch) => batch.LossPercent == 0 ? string.Empty : $", and {Fault.Text(batch.LossPercent)} % of what is weighed in lost";

    private static string Short(decimal value) => Fault.Text(decimal.Round(value, 4));
}
