using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Materia.Search;

/// <summary>What a range can be asked of: a property, or several that makers take for one.</summary>
[JsonConverter(typeof(PropertyGroupConverter))]
public enum PropertyGroup
{
    /// <summary>Melting range, slip melting point, melting point, clear point and drop point [Cel].</summary>
    Melting,

    /// <summary>Iodine value [g/(100.g)].</summary>
    Iodine,

    /// <summary>Saponification value [mg/g].</summary>
    Saponification,

    /// <summary>Density nearest to 20 °C; where there is none, the relative density times the density of the water it was compared with [g/mL].</summary>
    Density,

    /// <summary>Viscosity at the temperature nearest to 20 °C [mPa.s].</summary>
    Viscosity,

    /// <summary>Required HLB of an oil-in-water emulsion [1].</summary>
    RequiredHlb,

    /// <summary>Grades of the rabbit-ear assay, 0 to 5, of all studies [1].</summary>
    Comedogenic,

    /// <summary>Computed solid content at 20 °C, once well crystallised [%].</summary>
    SolidAt20,

    /// <summary>Computed solid content at 32 °C, the temperature of skin [%].</summary>
    SolidAt32,

    /// <summary>Computed clear point [Cel]; measured ones are among <see cref="Melting"/>.</summary>
    ClearPoint,

    /// <summary>HLB of an emulsifier [1].</summary>
    Hlb,

    /// <summary>Cation-exchange capacity [cmol/kg].</summary>
    CationExchangeCapacity,

    /// <summary>Volume of 2 g swollen in water [mL].</summary>
    Swelling,

    /// <summary>Shelf life unopened [mo].</summary>
    ShelfLife,

    /// <summary>pH in which it works or keeps [[pH]].</summary>
    EffectivePh,

    /// <summary>Molar mass [g/mol].</summary>
    MolarMass,

    /// <summary>Flash point [Cel].</summary>
    FlashPoint,
}

/// <summary>The names of <see cref="PropertyGroup"/> in requests and results.</summary>
public static class PropertyGroups
{
    private static readonly FrozenDictionary<string, PropertyGroup> ByName =
        Enum.GetValues<PropertyGroup>().ToFrozenDictionary(g => g.Name(), StringComparer.Ordinal);

    /// <summary>All groups.</summary>
    public static IReadOnlyList<PropertyGroup> All { get; } = Enum.GetValues<PropertyGroup>();

    /// <summary>The name of a group, such as <c>requiredHlb</c>.</summary>
    public static string Name(this PropertyGroup group) => JsonNamingPolicy.CamelCase.ConvertName(group.ToString());

    /// <summary>Finds the group of a name; <see langword="false"/> when no group has it.</summary>
    public static bool TryParse(string? name, out PropertyGroup group)
    {
        group = default;
        return name is not null && ByName.TryGetValue(name, out group);
    }
}

/// <summary>Writes a group as its name.</summary>
public sealed class PropertyGroupConverter() : JsonStringEnumConverter<PropertyGroup>(JsonNamingPolicy.CamelCase, allowIntegerValues: false);
