using System.Globalization;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.Batches;
using Materia.Formulation.Making;
using Materia.Formulation.Sections;

namespace Materia.Api.Documents;

/// <summary>The sheet that lies beside the stove: what to weigh, what to do, and room to write down what was done.</summary>
internal static class BatchSheet
{
    /// <summary>The word that asks for it.</summary>
    public const string Kind = "batch-sheet";

    /// <summary>Writes the sheet.</summary>
    public static Paper Of(Evaluation evaluation, Release release)
    {
        var batch = evaluation.Of(BatchPlan.Section) is { Lines.Count: > 0 } plan ? plan : null;
        var blocks = new List<PaperBlock>
        {
            new Paragraph(Heading(evaluation, release)),
            new Blanks(["Batch number", "Made by", "Date", "Room temperature"]),
            new Heading(2, "Weigh"),
            Lines(evaluation, batch),
        };
        blocks.AddRange(Amounts(batch));
        blocks.AddRange(Steps(evaluation.Of(ProcessPlan.Section)));
        blocks.Add(new Heading(2, "Write down"));
        blocks.Add(new Blanks(["Heated to", "Firm enough to whip at", "Filled at", "Weight filled", "Jars filled", "Set after", "Look, feel and smell", "What went otherwise"]));
        blocks.AddRange(Label(evaluation));
        blocks.Add(new Paragraph(Evaluation.Caution, IsNote: true));
        return new Paper(evaluation.Title is { Length: > 0 } title ? title : "Batch sheet", Kind, blocks);
    }

    private static string Heading(Evaluation evaluation, Release release)
    {
        var use = evaluation.Use is { } id && release.FindUse(id) is { } known ? $"{known.Name}. " : "";
        return string.Create(CultureInfo.InvariantCulture, $"Batch sheet. {use}Figures from release {release.Number} of {release.Published:yyyy-MM-dd}.");
    }

    private static Table Lines(Evaluation evaluation, BatchPlan? batch)
    {
        var lines = evaluation.Of(FormulaSummary.Section)!.Lines;
        var rows = lines.Select((line, i) => (IReadOnlyList<string>)
        [
            "☐", line.Label ?? line.Name, line.InciName ?? "", Shown.Number(line.Percent), batch is null ? Shown.Number(line.Percent) + " g" : Shown.Mass(batch.Lines[i].Mass), "", "",
        ]).ToList();
        return new Table(
            batch is null ? "For 100 g; give the formula a batch to have your own weights." : $"For {Shown.Mass(batch.Total!)}, to the scale's {Shown.Mass(batch.ScaleResolution!)}.",
            [new("Done"), new("Ingredient"), new("INCI name"), new("%", IsNumber: true), new("Weigh", IsNumber: true), new("Weighed", IsBlank: true), new("Lot and expiry", IsBlank: true)],
            rows);
    }

    private static IEnumerable<PaperBlock> Amounts(BatchPlan? batch)
    {
        if (batch is null)
        {
            yield break;
        }

        var items = new List<string>();
        if (batch.ExpectedYield is { } yielded)
        {
            items.Add($"About {Shown.Mass(yielded)} are left to fill after {Shown.Number(batch.LossPercent ?? 0)} % stay in the beakers.");
        }

        if (batch.Jars is { } jars)
        {
            items.Add(string.Create(CultureInfo.InvariantCulture, $"{Shown.Number(jars.MassInJar)} g go into a jar{(jars.Approximate ? ", about" : "")}: {jars.Full} full jars."));
        }

        items.AddRange(batch.Warnings);
        if (items.Count > 0)
        {
            yield return new Bullets(items);
        }
    }

    private static IEnumerable<PaperBlock> Steps(ProcessPlan? process)
    {
        if (process is null)
        {
            yield break;
        }

        yield return new Heading(2, "Make");
        foreach (var step in process.Steps)
        {
            yield return new Heading(3, string.Create(CultureInfo.InvariantCulture, $"{step.Number}. {Word(step.Phase)}{Figures(step)}"));
            yield return new Paragraph(step.Action);
            if (step.Ingredients.Count > 0)
            {
                yield return new Bullets([.. step.Ingredients.Select(i => $"{i.Name}, {(i.Mass is { } mass ? Shown.Mass(mass) : Shown.Number(i.Percent) + " %")}. {i.Because}")], Ticked: true);
            }

            yield return new Paragraph($"Look for: {step.WatchFor}");
            foreach (var caution in step.Cautions)
            {
                yield return new Paragraph(caution.Text, IsNote: true);
            }
        }
    }

    /// <summary>Temperature and time of a step, as its heading goes on with them; empty where it has neither.</summary>
    internal static string Figures(ProcessStep step)
    {
        string[] figures = [.. new[] { step.Temperature, step.Duration }.OfType<PlanFigure>().Select(Shown.Plan)];
        return figures.Length == 0 ? "" : $": {string.Join(", ", figures)}";
    }

    /// <summary>The name of a stage.</summary>
    internal static string Word(MakingStage stage)
    {
        var word = KebabCase<MakingStage>.Word(stage).Replace('-', ' ');
        return char.ToUpperInvariant(word[0]) + word[1..];
    }

    private static IEnumerable<PaperBlock> Label(Evaluation evaluation)
    {
        if (evaluation.Of(ProductSections.Declaration) is not { } declaration)
        {
            yield break;
        }

        yield return new Heading(2, "Label");
        yield return new Paragraph(declaration.Text);
        if (declaration.Warnings.Count > 0)
        {
            yield return new Bullets([.. declaration.Warnings.Select(w => w.Text)]);
        }

        var cautions = evaluation.Of(ProductSections.Cautions) ?? [];
        if (cautions.Count > 0)
        {
            yield return new Heading(2, "Take care");
            yield return new Bullets([.. cautions.Select(c => $"{c.Hazard}: {c.WhatToDo}")]);
        }
    }
}
