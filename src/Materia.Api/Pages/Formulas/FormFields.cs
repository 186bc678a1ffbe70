using System.Globalization;

namespace Materia.Api.Pages.Formulas;

/// <summary>The fields of the formula page's form; what cannot be read as a number is noted and left out.</summary>
/// <param name="form">The form as it was sent.</param>
public sealed class FormFields(IFormCollection form)
{
    /// <summary>The names of the fields that could not be read.</summary>
    public List<string> Unread { get; } = [];

    /// <summary>A text, trimmed; <see langword="null"/> when it is empty.</summary>
    public string? Text(string name) => form[name].LastOrDefault(v => !string.IsNullOrWhiteSpace(v))?.Trim();

    /// <summary>Whether the form has a field at all.</summary>
    public bool Has(string name) => form.ContainsKey(name);

    /// <summary>A number, with a decimal point or comma.</summary>
    public decimal? Number(string name)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (decimal.TryParse(text.TrimEnd('%', ' ').Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        Unread.Add(name);
        return null;
    }

    /// <summary>A whole number.</summary>
    public int? Whole(string name)
    {
        var number = Number(name);
        if (number is null || (number == decimal.Truncate(number.Value) && number is > int.MinValue and < int.MaxValue))
        {
            return (int?)number;
        }

        Unread.Add(name);
        return null;
    }
}
