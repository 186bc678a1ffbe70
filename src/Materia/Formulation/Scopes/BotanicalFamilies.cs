using System.Collections.Frozen;
using Materia.Catalogue;

namespace Materia.Formulation.Scopes;

/// <summary>
/// The families of plants whose members are known to set off allergies in people who react to one of them. The placing of genera in
/// families is general botany as recalled, not read in a flora; a genus that is not listed has no family here.
/// </summary>
public static class BotanicalFamilies
{
    private static readonly FrozenDictionary<string, string> ByGenus = new Dictionary<string, string[]>
    {
        ["Asteraceae (daisies)"] = ["Arctium", "Arnica", "Calendula", "Carthamus", "Centaurea", "Chamaemelum", "Cichorium", "Eclipta", "Helianthus", "Helichrysum", "Matricaria", "Silybum", "Vanillosmopsis", "Achillea", "Tanacetum", "Echinacea", "Artemisia"],
        ["Apiaceae (carrot family)"] = ["Daucus", "Foeniculum", "Pimpinella", "Centella", "Coriandrum", "Cuminum", "Anethum"],
        ["Anacardiaceae (cashew family)"] = ["Mangifera", "Pistacia", "Sclerocarya", "Toxicodendron", "Anacardium", "Schinus"],
        ["Fabaceae (legumes)"] = ["Arachis", "Glycine", "Pisum", "Trigonella", "Astragalus", "Glycyrrhiza", "Cyamopsis", "Ceratonia", "Cullen", "Indigofera", "Senegalia", "Senna", "Tara", "Clitoria", "Pentaclethra"],
        ["Brassicaceae (mustard family)"] = ["Brassica", "Camelina", "Crambe", "Raphanus"],
        ["Juglandaceae (walnut family)"] = ["Juglans", "Carya"],
        ["Betulaceae (birch family)"] = ["Betula", "Corylus"],
        ["Rosaceae (rose family)"] = ["Prunus", "Rosa", "Rubus", "Malus", "Fragaria"],
        ["Lamiaceae (mint family)"] = ["Lavandula", "Melissa", "Mentha", "Ocimum", "Origanum", "Perilla", "Pogostemon", "Salvia", "Thymus"],
        ["Lauraceae (laurel family)"] = ["Cinnamomum", "Camphora", "Litsea", "Persea", "Laurus"],
        ["Myrtaceae (myrtle family)"] = ["Corymbia", "Eucalyptus", "Melaleuca", "Syzygium"],
        ["Poaceae (grasses)"] = ["Avena", "Oryza", "Triticum", "Zea", "Saccharum", "Cymbopogon", "Chrysopogon", "Bambusa"],
        ["Pinaceae (pines)"] = ["Pinus", "Cedrus", "Abies", "Picea"],
        ["Rutaceae (citrus family)"] = ["Citrus"],
        ["Sapotaceae (shea family)"] = ["Vitellaria", "Argania", "Madhuca", "Diploknema", "Manilkara"],
    }.SelectMany(f => f.Value.Select(genus => (genus, f.Key))).ToFrozenDictionary(p => p.genus, p => p.Key, StringComparer.Ordinal);

    /// <summary>The family of the plant that <paramref name="ingredient"/> comes from, or <see langword="null"/>.</summary>
    public static string? Of(Ingredient ingredient) =>
        SpeciesGroups.Genus(ingredient) is { } genus ? ByGenus.GetValueOrDefault(genus) : null;
}
