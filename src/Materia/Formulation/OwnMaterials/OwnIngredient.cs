using Materia.Catalogue;
using Materia.Formulation.Normalising;

namespace Materia.Formulation.OwnMaterials;

/// <summary>Turns a maker's own material into an ingredient whose statements have the source <c>own</c>.</summary>
internal static class OwnIngredient
{
    /// <summary>The key that stands where a source would, for figures that came with the formula.</summary>
    public const string Source = "own";

    /// <summary>
    /// The grade of such figures: they were read in what the maker sent, which passes on a certificate or a label that was not seen.
    /// </summary>
    public const Evidence Grade = Evidence.Secondary;

    /// <summary>Checks <paramref name="own"/>, adds each fault, and gives the ingredient; it is of use only when there was no fault.</summary>
    public static Ingredient Create(OwnMaterial own, string pointer, Release release, FaultList faults)
    {
        var name = CheckName(own, pointer, release, faults);
        if (own.Kind is null)
        {
            faults.Add($"{pointer}/kind", $"Say what kind of material it is: {Fault.Words(KebabCase<IngredientKind>.Words)}.");
        }

        List<IngredientName> names = [new() { Text = name, Kind = NameKind.Common, Language = "en", Evidence = Grade, Source = Source }];
        if (!string.IsNullOrWhiteSpace(own.InciName))
        {
            names.Add(new() { Text = own.InciName, Kind = NameKind.Inci, Evidence = Grade, Source = Source });
        }

        return new Ingredient
        {
            Id = name,
            Kind = own.Kind ?? default,
            Names = names,
            Properties = OwnProperties.Create(own.Figures, pointer, faults),
            FattyAcidProfiles = OwnComposition.Profiles(own.FattyAcids, $"{pointer}/fattyAcids", release, faults),
            Constituents = OwnComposition.Constituents(own, pointer, faults),
        };
    }

    private static string CheckName(OwnMaterial own, string pointer, Release release, FaultList faults)
    {
        faults.Short($"{pointer}/name", own.Name);
        faults.Short($"{pointer}/inciName", own.InciName);
        if (string.IsNullOrWhiteSpace(own.Name))
        {
            faults.Add($"{pointer}/name", "Give your own material a name; results call it by that.");
        }
        else if (release.FindIngredient(own.Name) is not null)
        {
            faults.Add($"{pointer}/name", $"\"{own.Name}\" is the id of a catalogue ingredient. Give your own material another name, such as its lot, or use the ingredient.");
        }

        return own.Name ?? string.Empty;
    }
}
