using Materia.Catalogue;

namespace Materia.Chemistry.Heating;

/// <summary>How well heat passes between a filled vessel and what is round it, the resistance of the unstirred fat included [W/(m2.K)].</summary>
public static class Surroundings
{
    private const string Unit = "W/(m2.K)";

    /// <summary>Standing still in still air, in a fridge or on a bench.</summary>
    public static SourcedFigure StillAir { get; } = SourcedFigure.Recalled("heat passing to still air, unstirred", 6, 5, 7, Unit);

    /// <summary>Stirred now and then in still air; lies within the 2 to 25 that the notes cengel-convection-notes print for free convection of gases.</summary>
    public static SourcedFigure StirredInAir { get; } = SourcedFigure.Recalled("heat passing to still air, stirred", 10, 9, 11, Unit);

    /// <summary>Stirred in a bath of cold water; the lower half of what is printed for free convection of liquids, in series with the fat inside.</summary>
    public static SourcedFigure WaterBath { get; } = SourcedFigure.Recalled("heat passing to a cold water bath, stirred", 40, 25, 100, Unit);

    /// <summary>Thermal conductivity of fat, by the polynomial 0.18071 − 2.7604e-4 t − 1.7749e-7 t² at 40 °C.</summary>
    public static SourcedFigure FatConductivity { get; } = new("thermal conductivity of fat", 0.17, 0.165, 0.18, "W/(m.K)", Evidence.Secondary, "choi-okos-1986-copy", "table of Choi and Okos, row fat; its signs are recalled, the copy prints them badly");

    /// <summary>The share of a hotplate's power that reaches bath and vessel.</summary>
    public static SourcedFigure PlateEfficiency { get; } = SourcedFigure.Recalled("share of a hotplate's power that reaches the pot", 0.4, 0.3, 0.5, Units.One);

    /// <summary>A hotplate on a low setting, taken where no power is given.</summary>
    public static SourcedFigure PlatePower { get; } = SourcedFigure.Practice("power of a hotplate on a low setting", 500, 300, 1000, "W");

    /// <summary>Water in the bath for each gram of batch.</summary>
    public static SourcedFigure BathWater { get; } = SourcedFigure.Practice("water in the bath for each gram heated", 1.5, 1, 3, Units.One);

    /// <summary>Heat of melting of a gram of fat crystals, where the melting model gives none.</summary>
    public static SourcedFigure HeatOfCrystals { get; } = SourcedFigure.Recalled("heat of melting of fat crystals", 150, 100, 220, Units.JoulePerGram);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SourcedFigure> All { get; } = [StillAir, StirredInAir, WaterBath, FatConductivity, PlateEfficiency, PlatePower, BathWater, HeatOfCrystals];
}
