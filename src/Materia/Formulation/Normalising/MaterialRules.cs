using Materia.Catalogue;
using Materia.Formulation.OwnMaterials;

namespace Materia.Formulation.Normalising;

/// <summary>Finds what each line is made of.</summary>
internal sealed class MaterialRules(Release release, FaultList faults, List<string> notes)
{
    /// <summary>How far the shares of a mixture's parts may be from 100 [%]: suppliers round them to a tenth each.</summary>
    private const decimal PartsTolerance = 0.5m;

    /// <summary>The most parts that all mixtures of a formula may have together; as many as it may have lines.</summary>
    private const int MostParts = NormalisedFormula.MostLines;

    private readonly Dictionary<string, string> ownNames = new(StringComparer.OrdinalIgnoreCase);
    private int partsSoFar;

    /// <summary>The material of a line or a part at <paramref name="pointer"/>; <see langword="null"/> when it cannot be told, with the fault added.</summary>
    public LineMaterial? Find(string? id, OwnMaterial? own, string pointer)
    {
        if ((id is null) == (own is null))
        {
            faults.Add(
                id is null ? $"{pointer}/ingredient" : $"{pointer}/own",
                id is null ? "Name the material: \"ingredient\" with an id of the catalogue, or \"own\" with a description." : "Give \"ingredient\" or \"own\", not both.");
            return null;
        }

        if (own is not null)
        {
            return FindOwn(own, $"{pointer}/own");
        }

        return FindIngredient(id!, $"{pointer}/ingredient") is { } ingredient ? new LineMaterial(ingredient, false, [new MaterialPart(ingredient, 1)]) : null;
    }

    private Ingredient? FindIngredient(string id, string pointer)
    {
        if (release.FindIngredient(id) is { } found)
        {
            return found;
        }

        if (release.FindPresentId(id) is { } present)
        {
            notes.Add($"\"{id}\" is a former id; \"{present}\" was used.");
            return release.FindIngredient(present);
        }

        faults.Add(new FormulaFault(pointer, $"\"{Fault.Shorten(id)}\" is not an ingredient of the catalogue. Use an ingredient's id, such as \"shea-butter\", or describe the material with \"own\".")
        {
            UnknownIngredient = id,
        });
        return null;
    }

    private LineMaterial FindOwn(OwnMaterial own, string pointer)
    {
        var ingredient = OwnIngredient.Create(own, pointer, release, faults);
        if (ingredient.Id.Length > 0 && !ownNames.TryAdd(ingredient.Id, pointer))
        {
            faults.Add($"{pointer}/name", $"Another material of this formula is called \"{Fault.Shorten(ingredient.Id)}\" (at {ownNames[ingredient.Id]}). Give each its own name.");
        }

        return new LineMaterial(ingredient, true, own.Parts.Count == 0 ? [new MaterialPart(ingredient, 1)] : FindParts(own, pointer));
    }

    private List<MaterialPart> FindParts(OwnMaterial own, string pointer)
    {
        if (own.FattyAcids.Count > 0 || own.Constituents.Count > 0 || own.Figures.Count > 0 || own.Water is not null)
        {
            faults.Add($"{pointer}/parts", "A mixture takes its figures from its parts. Leave out either the parts or the other figures.");
        }

        partsSoFar += own.Parts.Count;
        if (partsSoFar > MostParts)
        {
            faults.Add($"{pointer}/parts", $"The mixtures of a formula have at most {MostParts} parts together. Add up parts of the same material.");
            return [];
        }

        List<MaterialPart> parts = [];
        decimal sum = 0;
        for (var i = 0; i < own.Parts.Count; i++)
        {
            var (part, at) = (own.Parts[i], $"{pointer}/parts/{i}");
            if (part.Own is { Parts.Count: > 0 })
            {
                faults.Add($"{at}/own/parts", "A part has no parts of its own. List all materials on one level.");
                continue;
            }

            var percent = part.Percent ?? 0;
            if (percent is <= 0 or > 100)
            {
                faults.Add($"{at}/percent", "Give this part's share of the mixture, over 0 and up to 100.");
                continue;
            }

            sum += percent;
            if (Find(part.Ingredient, part.Own, at) is { } material)
            {
                parts.Add(new MaterialPart(material.Ingredient, percent));
            }
        }

        if (parts.Count == own.Parts.Count && Math.Abs(sum - 100) > PartsTolerance)
        {
            faults.Add($"{pointer}/parts", $"The parts add up to {Fault.Text(sum)} %. They make up the whole mixture, so they must add up to 100.");
        }

        return sum == 0 ? parts : [.. parts.Select(p => p with { Share = p.Share / sum })];
    }
}
