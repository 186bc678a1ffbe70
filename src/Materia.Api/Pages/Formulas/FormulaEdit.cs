using System.Globalization;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Search;

namespace Materia.Api.Pages.Formulas;

/// <summary>What comes of a formula when the form is sent.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Search">What was typed for a new line and may mean several ingredients.</param>
/// <param name="Added">Whether a line was added at the end.</param>
public sealed record FormulaEdit(Formula Formula, string? Search, bool Added)
{
    /// <summary>Applies the fields. Members that the page has no field for stay as they are.</summary>
    public static FormulaEdit Apply(Formula formula, FormFields fields, ServedRelease served)
    {
        var lines = formula.Lines.Select((line, i) => Line(line, i, fields)).ToList();
        if (fields.Whole("remove") is { } gone && gone >= 0 && gone < lines.Count)
        {
            lines.RemoveAt(gone);
        }

        var (id, search) = Named(fields, served);
        var added = id is not null && lines.Count < NormalisedFormula.MostLines;
        if (added)
        {
            lines.Add(new FormulaLine { Ingredient = id });
        }

        var overrun = fields.Number("overrun");
        var ph = fields.Number("ph");
        return new(
            formula with
            {
                Title = fields.Text("title"),
                Use = fields.Text("use"),
                Market = KebabCase<Market>.TryParse(fields.Text("market"), out var market) ? market : null,
                Lines = lines,
                Batch = Batch(formula.Batch, fields),
                Whip = overrun is null ? null : new Whip { OverrunPercent = overrun },
                Ph = fields.Has("ph") ? (ph is null ? null : new MeasuredPh { Value = ph }) : formula.Ph,
            },
            search,
            added);
    }

    /// <summary>The ingredient that a text names beyond doubt: by its id, or by a name that is written out.</summary>
    public static string? Find(string text, ServedRelease served)
    {
        var id = text.ToLowerInvariant().Replace(' ', '-');
        if (served.Release.FindIngredient(id) is not null)
        {
            return id;
        }

        var near = served.Index.Suggest(text.Length <= SearchRequest.LongestText ? text : text[..SearchRequest.LongestText], 2);
        return near.Count == 1 || (near.Count > 1 && near[0].Text.Equals(text, StringComparison.OrdinalIgnoreCase)) ? near[0].IngredientId : null;
    }

    private static (string? Id, string? Search) Named(FormFields fields, ServedRelease served)
    {
        if (fields.Text("addId") is { } id && served.Release.FindIngredient(id) is not null)
        {
            return (id, null);
        }

        return fields.Text("add") is not { } text ? (null, null) : Find(text, served) is { } found ? (found, null) : (null, text);
    }

    private static FormulaLine Line(FormulaLine line, int i, FormFields fields)
    {
        var n = i.ToString(CultureInfo.InvariantCulture);
        var rest = fields.Text("rest") == n;
        return line with
        {
            Percent = rest || line.Mass is not null ? null : fields.Number("percent-" + n),
            Balance = rest ? true : null,
            Phase = KebabCase<Phase>.TryParse(fields.Text("phase-" + n), out var phase) ? phase : null,
        };
    }

    private static FormulaBatch? Batch(FormulaBatch? before, FormFields fields)
    {
        var batch = (before ?? new FormulaBatch()) with
        {
            Mass = fields.Number("mass"),
            Unit = fields.Text("unit"),
            ScaleResolution = fields.Number("scale"),
            LossPercent = fields.Number("loss"),
            Jars = fields.Whole("jars"),
            JarVolume = fields.Number("jarVolume"),
        };
        return batch.Mass is null && batch.Jars is null ? null : batch;
    }
}
