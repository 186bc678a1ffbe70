using System.Globalization;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Materia.Data.Engines;

/// <summary>Stores a decimal as its invariant text, scale included.</summary>
internal sealed class DecimalTextConverter() : ValueConverter<decimal, string>(
    number => number.ToString(CultureInfo.InvariantCulture),
    text => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture));
