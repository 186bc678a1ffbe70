using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>What the model says of whole fats and neat waxes whose composition is known, and the band it puts round it.</summary>
internal static class FatPredictions
{
    /// <summary>The solid content, or the solid fat index it is set beside, at the row's temperature; <see langword="null"/> for other rows.</summary>
    public static SolidContentPoint? Solid(MeltingRow row)
    {
        if (row.Quantity is not ("SFC" or "SFI") || row.Temperature is not { } t || MeltingSystems.Melt(row.System) is not { } melting)
        {
            return null;
        }

        var (below, above) = (melting.SolidContent.Last(p => p.Temperature <= t), melting.SolidContent.First(p => p.Temperature >= t));
        double Between(Func<SolidContentPoint, double> of) => of(below) + ((t - below.Temperature) * (of(above) - of(below)));
        return new(t, Between(p => p.Percent), Between(p => p.Low), Between(p => p.High));
    }

    /// <summary>Where 4 % is solid, for slip points and printed melting ranges of fats, and where 1 % is, for neat waxes; <see langword="null"/> for other rows.</summary>
    public static double? Melting(MeltingRow row)
    {
        if (row.Quantity == "Tm (bulk)" || (row.Quantity == "melting range" && row.System.EndsWith(" wax", StringComparison.Ordinal)))
        {
            return MeltingSystems.Melt(row.System)?.ClearPoint?.Value;
        }

        return row.Unit == "degC" && (IsMelting(row.Quantity) || row.System == "cocoa butter form V") ? MeltingSystems.Melt(row.System)?.SlipPoint?.Value : null;
    }

    /// <summary>The heat of fusion of a neat wax [J/g]; <see langword="null"/> for other rows.</summary>
    public static double? Heat(MeltingRow row)
    {
        var wax = row.System == "insect waxes incl. beeswax" ? "beeswax" : row.System;
        return row.Quantity is "dHfus (bulk)" or "dHfus range" && MeltingSystems.Find(wax) is { } found
            ? NaturalWaxes.Find(found.Id)?.Sum(p => p.MassFraction * 1000 * p.Species.EnthalpyOfFusion / p.Species.MolarMass)
            : null;
    }

    private static bool IsMelting(string quantity) =>
        quantity.StartsWith("slip melting point", StringComparison.Ordinal) || quantity.StartsWith("melting point", StringComparison.Ordinal) || quantity.StartsWith("melting range", StringComparison.Ordinal);
}
