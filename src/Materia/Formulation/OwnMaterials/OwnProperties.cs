using System.Text.Json;
using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.OwnMaterials;

/// <summary>Turns the maker's figures into the catalogue's.</summary>
internal static class OwnProperties
{
    /// <summary>The members of <c>own</c> that name a property, such as <c>iodineValue</c>.</summary>
    public static IReadOnlyList<(Property Property, string Member)> Members { get; } =
        [.. Enum.GetValues<Property>().Select(p => (p, JsonNamingPolicy.CamelCase.ConvertName(p.ToString())))];

    /// <summary>Checks the figures, adds each fault, and gives them as statements in the order of the properties.</summary>
    public static IReadOnlyList<Figure> Create(IReadOnlyDictionary<Property, OwnFigure> figures, string pointer, FaultList faults)
    {
        if (figures.Count == 0)
        {
            return [];
        }

        List<Figure> created = [];
        foreach (var (property, member) in Members)
        {
            if (figures.TryGetValue(property, out var figure))
            {
                created.Add(Create(figure, PropertyDefinition.All[property], $"{pointer}/{member}", faults));
            }
        }

        return created;
    }

    private static Figure Create(OwnFigure own, PropertyDefinition definition, string pointer, FaultList faults)
    {
        if (own is { Value: not null, Typical: not null })
        {
            faults.Add($"{pointer}/value", "\"value\" and \"typical\" mean the same; give one of them.");
        }

        var figure = new Figure
        {
            Property = definition.Property,
            Low = own.Low,
            Typical = own.Value ?? own.Typical,
            High = own.High,
            Unit = definition.Unit,
            At = own.At,
            Evidence = OwnIngredient.Grade,
            Source = OwnIngredient.Source,
        };

        if (own.Unit != definition.Unit)
        {
            faults.Add($"{pointer}/unit", own.Unit is null
                ? $"Give the unit: {definition.Title} is kept in \"{definition.Unit}\"."
                : $"{definition.Title} is kept in \"{definition.Unit}\"; convert the figure from \"{Fault.Shorten(own.Unit)}\".");
            return figure;
        }

        CheckValues(figure, definition, pointer, faults);
        return figure;
    }

    private static void CheckValues(Figure figure, PropertyDefinition definition, string pointer, FaultList faults)
    {
        if (figure is { Low: null, Typical: null, High: null })
        {
            faults.Add($"{pointer}/value", $"Give a value, or low and high, for {definition.Title}.");
            return;
        }

        var plausible = faults.Within(pointer, figure.Least(), definition.PlausibleLow, definition.PlausibleHigh, $"{definition.Title} [{definition.Unit}]");
        if (plausible)
        {
            faults.Within(pointer, figure.Greatest(), definition.PlausibleLow, definition.PlausibleHigh, $"{definition.Title} [{definition.Unit}]");
        }

        OwnComposition.CheckOrder(pointer, figure.Low, figure.Typical, figure.High, faults);

        // No raw material is measured outside these; further out a wrong unit is likelier.
        faults.Within($"{pointer}/at/temperature", figure.At?.Temperature, -100, 400, "The temperature of measurement [Cel]");
        faults.Within($"{pointer}/at/waterTemperature", figure.At?.WaterTemperature, 0, 100, "The temperature of the water [Cel]");
    }
}
