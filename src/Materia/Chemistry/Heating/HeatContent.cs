namespace Materia.Chemistry.Heating;

/// <summary>
/// The heat in a blend against temperature: specific heats added up by mass, and the heat of its crystals by the solid-content curve that
/// melting has already worked out.
/// </summary>
internal sealed class HeatContent
{
    private readonly IReadOnlyList<SolidContentPoint> curve;

    public HeatContent(Blend blend, BlendMelting melting)
    {
        curve = melting.SolidContent;
        var figures = new List<SourcedFigure>();
        foreach (var component in blend.Components)
        {
            var heat = SpecificHeats.Of(component.Ingredient);
            SpecificHeat += component.MassFraction / blend.TotalMass * heat.Value;
            if (!figures.Contains(heat))
            {
                figures.Add(heat);
            }
        }

        // The curve counts percent of the fat phase; what is neither powder nor unknown is fat.
        FatShare = curve.Count == 0 ? 0 : Math.Max(0, 1 - (melting.PowderPercent / 100));
        var at20 = Solid(20);
        if (melting.LatentHeat?.Value is { } latent && at20 >= 1)
        {
            HeatOfCrystals = latent / at20 * 100;
        }
        else
        {
            HeatOfCrystals = Surroundings.HeatOfCrystals.Value;
            figures.Add(Surroundings.HeatOfCrystals);
        }

        Figures = figures;
    }

    /// <summary>Specific heat of the blend [J/(g.K)].</summary>
    public double SpecificHeat { get; }

    /// <summary>The share of the blend that the curve speaks of [1].</summary>
    public double FatShare { get; }

    /// <summary>Heat of melting of its crystals [J/g].</summary>
    public double HeatOfCrystals { get; }

    /// <summary>The figures that were set.</summary>
    public IReadOnlyList<SourcedFigure> Figures { get; }

    /// <summary>True when there is a curve.</summary>
    public bool HasCurve => curve.Count > 0;

    /// <summary>Solid content at a temperature [% of the fat phase]; nought where there is no curve.</summary>
    public double Solid(double temperature)
    {
        if (curve.Count == 0)
        {
            return 0;
        }

        var place = Math.Clamp(temperature - curve[0].Temperature, 0, curve.Count - 1);
        var below = Math.Min((int)place, curve.Count - 2);
        return curve[below].Percent + ((place - below) * (curve[below + 1].Percent - curve[below].Percent));
    }

    /// <summary>The temperature at which no more than so much is solid on warming [Cel]; <see langword="null"/> where it never is as much.</summary>
    public double? TemperatureAt(double percent)
    {
        for (var i = curve.Count - 1; i >= 0; i--)
        {
            if (curve[i].Percent > percent)
            {
                return i == curve.Count - 1
                    ? curve[i].Temperature
                    : curve[i].Temperature + ((curve[i].Percent - percent) / (curve[i].Percent - curve[i + 1].Percent));
            }
        }

        return null;
    }

    /// <summary>Heat to bring a gram from one temperature to another, its crystals melted on the way [J/g].</summary>
    public double Between(double from, double to) => (SpecificHeat * (to - from)) + Latent(from, to);

    /// <summary>Heat that the crystals take up between two temperatures [J/g of blend]; negative on cooling.</summary>
    public double Latent(double from, double to) => FatShare * HeatOfCrystals * (Solid(from) - Solid(to)) / 100;
}
