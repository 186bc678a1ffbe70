using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>Figures: the property's own unit, values that rise and lie in its plausible band, conditions that say something.</summary>
internal static class Figures
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (figure, at) in Statements.Items(ingredient.Properties, place, "properties"))
            {
                var definition = PropertyDefinition.All[figure.Property];
                var property = KebabCase<Property>.Word(figure.Property);
                if (figure.Unit != definition.Unit)
                {
                    faults.Add(at, $"unit \"{figure.Unit}\" does not fit {property}; convert the figure to {definition.Unit}");
                }

                new RangeOrder(figure.Low, figure.Typical, figure.High)
                    .Check(definition.PlausibleLow, definition.PlausibleHigh, $"the plausible band of {property} [{definition.Unit}]", at, faults);
                CheckConditions(figure, property, at, faults);
            }
        }

        var melting = PropertyDefinition.All[Property.MeltingPoint];
        foreach (var (acid, at) in seed.FattyAcids.Where(a => a.Value.MeltingPoint is not null))
        {
            new RangeOrder(null, acid.MeltingPoint, null)
                .Check(melting.PlausibleLow, melting.PlausibleHigh, "the plausible band of melting_point [Cel]", at, faults);
        }
    }

    private static void CheckConditions(Figure figure, string property, Place at, FaultList faults)
    {
        if (figure.At is { Temperature: null, WaterTemperature: null })
        {
            faults.Add(at, "\"at\" is empty; give the temperature or leave it out");
        }

        if (figure.At?.WaterTemperature is not null && figure.Property != Property.RelativeDensity)
        {
            faults.Add(at, $"waterTemperature belongs to relative-density, not to {property}; leave it out");
        }
    }
}
