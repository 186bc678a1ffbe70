using System.Globalization;
using Materia.Api.Figures;
using Materia.Chemistry;
using Materia.Formulation;
using Materia.Formulation.Sections;

namespace Materia.Api.Documents;

/// <summary>The chapters of a handout, with a sentence on what each figure is good for.</summary>
internal static class HandoutChapters
{
    /// <summary>The chapters that the evaluation has something for.</summary>
    public static IEnumerable<HandoutChapter> Of(Evaluation evaluation) =>
        new[] { Melting(evaluation), Flow(evaluation), Acids(evaluation), Titration(evaluation, ChemistrySections.IodineValue, "Iodine value", "How much iodine 100 g take up: each double bond takes two atoms. The higher it is, the softer a fat and the sooner it turns rancid."),
            Titration(evaluation, ChemistrySections.SaponificationValue, "Saponification value", "How much potassium hydroxide one gram takes up. Short fatty acids need more of it, so coconut stands high and rapeseed low."), Oxidation(evaluation), Allergens(evaluation), Limits(evaluation) }.OfType<HandoutChapter>();

    private static HandoutChapter? Melting(Evaluation evaluation)
    {
        if (evaluation.Of(ChemistrySections.Melting) is not { } melting)
        {
            return null;
        }

        List<PaperBlock> blocks = [new Paragraph("A fat is a mixture of crystals and oil. How much of it is solid decides whether it cuts, scoops or pours; mixing two fats does not simply average them, because they dissolve in each other.")];
        if (melting.Absent is { } absent)
        {
            blocks.Add(new Paragraph(absent, IsNote: true));
            return new("How it melts", blocks, null, null, []);
        }

        blocks.Add(new Paragraph($"It is clear at {Shown.Figure(melting.ClearPoint)}."));
        blocks.Add(new Table(
            "In the hand.",
            [new("At", IsNumber: true), new("Solid", IsNumber: true), new("It is")],
            [.. melting.Texture.Select(t => (IReadOnlyList<string>)[$"{Shown.Number(t.Temperature)} °C", $"{Math.Round(t.Percent, 2).ToString("0.##", CultureInfo.InvariantCulture)} %", t.Note is null ? t.Words : $"{t.Words} ({t.Note})"])]));
        return new("How it melts", blocks, MeltingFigure.Kind, melting.Method, melting.Steps ?? []);
    }

    private static HandoutChapter? Flow(Evaluation evaluation) => evaluation.Of(ChemistrySections.Flow) is not { } flow ? null : new(
        "How it flows",
        [
            new Paragraph("Viscosity says how thick a liquid is: water has about 1 mPa·s, light oils some 50 and castor oil near 1000 at 20 °C. Powders thicken it, warmth thins it."),
            flow.Absent is { } absent
                ? new Paragraph(absent, IsNote: true)
                : new Table("While the fats are melted.", [new("At", IsNumber: true), new("Viscosity", IsNumber: true), new("Range")], [.. flow.Viscosity.Select(v => (IReadOnlyList<string>)[$"{Shown.Number(v.Temperature)} °C", $"{Shown.Number(v.Value)} mPa·s", $"{Shown.Number(v.Low)} to {Shown.Number(v.High)}"])]),
        ],
        FlowFigure.Kind, flow.Absent is null ? flow.Method : null, flow.Steps ?? []);

    private static HandoutChapter? Acids(Evaluation evaluation) => evaluation.Of(ChemistrySections.FattyAcids) is not { } acids ? null : new(
        "Fatty acids",
        [
            new Paragraph("Fats are built of fatty acids. Saturated ones pack closely and are firm and lasting; each double bond makes a kink, keeps the fat soft and gives oxygen a place to begin."),
            acids.Absent is { } absent
                ? new Paragraph(absent, IsNote: true)
                : new Paragraph(acids.Classes is { } classes
                    ? $"Saturated {Shown.Number(classes.Saturated.Percent)} %, monounsaturated {Shown.Number(classes.Monounsaturated.Percent)} %, polyunsaturated {Shown.Number(classes.Polyunsaturated.Percent)} % of all fatty acids."
                    : "The shares of the single acids are in the figure."),
        ],
        FattyAcidFigure.Kind, acids.Absent is null ? acids.Method : null, acids.Steps ?? []);

    private static HandoutChapter? Titration(Evaluation evaluation, EvaluationSection<ComputedFigure> section, string title, string meaning) => evaluation.Of(section) is not { } figure
        ? null
        : new(title, [new Paragraph(meaning), new Paragraph($"Here: {Shown.Figure(figure)}.")], null, figure.Value is null ? null : figure.Method, figure.Steps ?? []);

    private static HandoutChapter? Oxidation(Evaluation evaluation) => evaluation.Of(ChemistrySections.Oxidation) is not { } oxidation ? null : new(
        "What turns rancid",
        [
            new Paragraph("Oxygen attacks fatty acids beside their double bonds: linoleic acid about ten times and linolenic acid about twenty times as fast as oleic acid. The index weighs them so."),
            new Paragraph($"Here: {Shown.Figure(oxidation.CoxValue)}{(oxidation.Band is { } band ? $", {band.Word}" : "")}."),
            new Bullets(oxidation.Storage),
        ],
        OxidationFigure.Kind, oxidation.CoxValue.Value is null ? null : oxidation.CoxValue.Method, oxidation.CoxValue.Steps ?? []);

    private static HandoutChapter? Allergens(Evaluation evaluation) => evaluation.Of(RegulationSections.Allergens) is not { Count: > 0 } allergens ? null : new(
        "Fragrance allergens",
        [
            new Paragraph("Essential oils bring substances that some people react to. From a threshold on the label must name them, so that whoever knows their allergy can leave the product alone."),
            new Table(
                "What the label must name, and what stays below.",
                [new("Name on the label"), new("Greatest share", IsNumber: true), new("Threshold", IsNumber: true), new("Named")],
                [.. allergens.Select(a => (IReadOnlyList<string>)[a.DeclarationName, $"{Shown.Number(a.Amount.High)} %", $"{Shown.Number(a.Threshold)} %", a.Declared ? "yes" : a.DeclaredFrom is { } from ? string.Create(CultureInfo.InvariantCulture, $"from {from:yyyy-MM-dd}") : "no"])]),
        ],
        AllergenFigure.Kind, Materia.Regulation.Allergens.AllergenFindings.Method, []);

    private static HandoutChapter? Limits(Evaluation evaluation) => evaluation.Of(RegulationSections.Limits) is not { Count: > 0 } limits ? null : new(
        "Limits",
        [
            new Paragraph("Law and trade standards bound some substances. What counts is the substance, not the oil that brings it, so the shares of all oils are added up at their greatest."),
            new Table(
                "Worst first.",
                [new("Substance"), new("Verdict"), new("Greatest share", IsNumber: true), new("Limit", IsNumber: true), new("Rule")],
                [.. limits.Take(20).Select(f => (IReadOnlyList<string>)[f.Substance, Catalogue.KebabCase<Materia.Regulation.Limits.LimitStatus>.Word(f.Status), $"{Shown.Number(f.Amount.High)} {Shown.Unit(f.Unit)}".TrimEnd(), f.Limit is { } limit ? $"{Shown.Number(limit)} {Shown.Unit(f.Unit)}".TrimEnd() : "no number", f.Entry is null ? f.Instrument : $"{f.Instrument}, {f.Entry}"])]),
            .. limits.Count > 20 ? new PaperBlock[] { new Paragraph($"{limits.Count - 20} more are in the section limits.") } : [],
        ],
        LimitFigure.Kind, Materia.Regulation.Limits.LimitFindings.Method, []);
}
