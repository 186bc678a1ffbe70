using System.Collections.Frozen;

namespace Materia.Chemistry.Heating;

/// <summary>A vessel to make in, as a straight-sided one whose filling stands <paramref name="Slenderness"/> times as high as it is wide. Walls are recalled figures.</summary>
/// <param name="Id">The word in a formula.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Slenderness">Height of the filling over its width [1].</param>
/// <param name="WallMass">Mass of the wall for each area [kg/m2].</param>
/// <param name="WallHeat">Specific heat of the wall [J/(g.K)].</param>
/// <param name="WallResistance">How much the wall hinders heat [m2.K/W].</param>
public sealed record Vessel(string Id, string Name, double Slenderness, double WallMass, double WallHeat, double WallResistance)
{
    /// <summary>All vessels, the usual one first.</summary>
    public static IReadOnlyList<Vessel> All { get; } =
    [
        new("steel-bowl", "steel bowl", 0.4, 6.3, 0.5, 0),
        new("glass-beaker", "glass beaker", 0.9, 5.6, 0.84, 0.002),
        new("plastic-beaker", "plastic beaker", 0.9, 1.4, 1.9, 0.0075),
        new("ceramic-bowl", "ceramic bowl", 0.4, 14, 0.9, 0.005),
        new("enamel-pot", "enamelled pot", 0.6, 8, 0.5, 0),
    ];

    private static readonly FrozenDictionary<string, Vessel> ById = All.ToFrozenDictionary(v => v.Id, StringComparer.Ordinal);

    /// <summary>The vessel of this id, or <see langword="null"/>.</summary>
    public static Vessel? Find(string id) => ById.GetValueOrDefault(id);
}
