namespace Materia.Chemistry;

/// <summary>What limits a blend's viscosity.</summary>
internal static class FlowWarnings
{
    /// <summary>The share of the packing limit above which a suspension thins under shear, and above which it holds its shape.</summary>
    private const double ShearThins = 0.6;

    private const double HoldsShape = 0.8;

    public static void Add(Blend blend, List<string> warnings, Suspension? suspension, LiquidMix mix)
    {
        var castor = false;
        var hydrocarbon = false;
        for (var i = 0; i < blend.Materials.Length; i++)
        {
            var material = blend.Materials[i];
            if (blend.Components[i].MassFraction <= 0)
            {
                continue;
            }

            castor |= material.Acids is { MeanHydroxyls: > 0.5 };
            hydrocarbon |= material.Ingredient.Kind == Catalogue.IngredientKind.Hydrocarbon;
            if (material.Viscosity?.Note is { } note)
            {
                warnings.Add($"{blend.Components[i].Name}: {note}.");
            }
        }

        if (castor && hydrocarbon)
        {
            warnings.Add("Castor oil does not mix fully with hydrocarbons: expect cloudiness or two layers, for which the figures do not hold.");
        }

        if (mix.Ratio > 5)
        {
            warnings.Add("The liquids' viscosities lie more than fivefold apart, where mixing rules differ by about 20 %.");
        }

        if (suspension is null)
        {
            return;
        }

        var fullness = suspension.VolumeFraction / suspension.MaximumPacking;
        warnings.Add("With powders the figures are good to a factor of 1.5 at best: clays flocculate in oil.");
        if (suspension.Assumed.Count > 0)
        {
            warnings.Add($"No oil absorption is held for {Written.List(suspension.Assumed)}; a packing limit of 0.45 is assumed.");
        }

        if (fullness > HoldsShape)
        {
            warnings.Add("So much powder gives a yield stress: it holds its shape at rest, and the figures are those of strong stirring.");
        }
        else if (fullness > ShearThins)
        {
            warnings.Add("So much powder makes it thinner under shear; the figures are those of gentle stirring.");
        }
    }
}
