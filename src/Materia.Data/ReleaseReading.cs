using Materia.Catalogue;
using Materia.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Materia.Data;

/// <summary>Reads a release's content: one query for each table, put together by look-up.</summary>
internal sealed class ReleaseReading(MateriaContext context, int release)
{
    /// <summary>Reads everything, each list in the order in which it was published.</summary>
    public async Task<CatalogueContent> ReadAsync(CancellationToken cancellation)
    {
        var formerIds = await PartsAsync<FormerIdRow>(cancellation);
        var origins = await PartsAsync<IngredientOriginRow>(cancellation);
        var families = await PartsAsync<OriginAllergenFamilyRow>(cancellation);
        var names = await PartsAsync<IngredientNameRow>(cancellation);
        var numbers = await PartsAsync<RegistryNumberRow>(cancellation);
        var functions = await PartsAsync<IngredientFunctionRow>(cancellation);
        var figures = await PartsAsync<PropertyFigureRow>(cancellation);
        var profiles = await PartsAsync<FattyAcidProfileRow>(cancellation);
        var shares = (await RowsAsync<FattyAcidShareRow>(cancellation)).ToLookup(r => (r.Ingredient, r.Profile), r => r.ToRecord());
        var fats = await PartsAsync<TriacylglycerolProfileRow>(cancellation);
        var fatShares = (await RowsAsync<TriacylglycerolShareRow>(cancellation)).ToLookup(r => (r.Ingredient, r.Profile), r => r.ToRecord());
        var constituents = await PartsAsync<ConstituentRow>(cancellation);
        var descriptions = await PartsAsync<IngredientDescriptionRow>(cancellation);
        var charges = await PartsAsync<IngredientChargeRow>(cancellation);
        var compositeParts = await PartsAsync<CompositePartRow>(cancellation);
        var usageLevels = await PartsAsync<UsageLevelRow>(cancellation);
        var handling = await PartsAsync<HandlingNoteRow>(cancellation);
        var memberships = await PartsAsync<SubstitutionMembershipRow>(cancellation);
        var bodyNotes = await PartsAsync<BodyNoteRow>(cancellation);
        var comedogenic = await PartsAsync<ComedogenicNoteRow>(cancellation);
        var cautions = await PartsAsync<CautionRow>(cancellation);
        var effects = (await RowsAsync<NeedEffectRow>(cancellation)).ToLookup(r => r.Need, r => r.ToRecord(), StringComparer.Ordinal);
        var regulation = new RegulationReading(context, release);
        return new CatalogueContent
        {
            Ingredients = (await RowsAsync<IngredientRow>(cancellation)).ConvertAll(ToIngredient),
            Sources = (await RowsAsync<SourceRow>(cancellation)).ConvertAll(r => r.ToRecord()),
            FattyAcids = (await RowsAsync<FattyAcidRow>(cancellation)).ConvertAll(r => r.ToRecord()),
            Uses = (await RowsAsync<ProductUseRow>(cancellation)).ConvertAll(r => r.ToRecord()),
            SubstitutionGroups = (await RowsAsync<SubstitutionGroupRow>(cancellation)).ConvertAll(r => r.ToRecord()),
            Limits = await regulation.LimitsAsync(cancellation),
            Allergens = await regulation.AllergensAsync(cancellation),
            Needs = (await RowsAsync<NeedRow>(cancellation)).ConvertAll(r => r.ToRecord([.. effects[r.Id]])),
        };

        Ingredient ToIngredient(IngredientRow row) => new()
        {
            Id = row.Id,
            FormerIds = [.. formerIds[row.Id].Select(r => r.Id)],
            Kind = row.Kind,
            Origin = origins[row.Id].SingleOrDefault()?.ToRecord([.. families[row.Id].Select(r => r.Family)]),
            Names = [.. names[row.Id].Select(r => r.ToRecord())],
            Numbers = [.. numbers[row.Id].Select(r => r.ToRecord())],
            Functions = [.. functions[row.Id].Select(r => r.ToRecord())],
            Properties = [.. figures[row.Id].Select(r => r.ToRecord())],
            FattyAcidProfiles = [.. profiles[row.Id].Select(r => r.ToRecord([.. shares[(row.Id, r.Ordinal)]]))],
            TriacylglycerolProfiles = [.. fats[row.Id].Select(r => r.ToRecord([.. fatShares[(row.Id, r.Ordinal)]]))],
            Constituents = [.. constituents[row.Id].Select(r => r.ToRecord())],
            Description = descriptions[row.Id].SingleOrDefault()?.ToRecord(),
            Charge = charges[row.Id].SingleOrDefault()?.ToRecord(),
            Parts = [.. compositeParts[row.Id].Select(r => r.ToRecord())],
            UsageLevels = [.. usageLevels[row.Id].Select(r => r.ToRecord())],
            Handling = [.. handling[row.Id].Select(r => r.ToRecord())],
            SubstitutionGroups = [.. memberships[row.Id].Select(r => r.ToRecord())],
            BodyNotes = [.. bodyNotes[row.Id].Select(r => r.ToRecord())],
            Comedogenic = [.. comedogenic[row.Id].Select(r => r.ToRecord())],
            Cautions = [.. cautions[row.Id].Select(r => r.ToRecord())],
        };
    }

    private async Task<ILookup<string, T>> PartsAsync<T>(CancellationToken cancellation)
        where T : ContentRow, IIngredientPart => (await RowsAsync<T>(cancellation)).ToLookup(r => r.Ingredient, StringComparer.Ordinal);

    private Task<List<T>> RowsAsync<T>(CancellationToken cancellation)
        where T : ContentRow =>
        context.Set<T>().AsNoTracking().Where(r => r.Release == release).OrderBy(r => r.Ordinal).ToListAsync(cancellation);
}
