using Materia.Catalogue;
using Materia.Data.Rows;

namespace Materia.Data;

/// <summary>A release's content as rows.</summary>
internal static class ReleaseRows
{
    /// <summary>The rows of each table, a table after the tables that it refers to.</summary>
    public static IEnumerable<IReadOnlyCollection<ContentRow>> Of(int release, CatalogueContent content)
    {
        var ingredients = content.Ingredients;
        return
        [
            [.. content.Sources.Select((source, ordinal) => new SourceRow(release, ordinal, source))],
            [.. content.FattyAcids.Select((acid, ordinal) => new FattyAcidRow(release, ordinal, acid))],
            [.. content.Uses.Select((use, ordinal) => new ProductUseRow(release, ordinal, use))],
            [.. content.SubstitutionGroups.Select((group, ordinal) => new SubstitutionGroupRow(release, ordinal, group))],
            [.. ingredients.Select((ingredient, ordinal) => new IngredientRow(release, ordinal, ingredient))],
            Parts(i => i.FormerIds, (place, id) => new FormerIdRow(place, id)),
            Single(i => i.Origin, (place, origin) => new IngredientOriginRow(place, origin)),
            Parts(i => i.Origin?.AllergenFamilies ?? [], (place, family) => new OriginAllergenFamilyRow(place, family)),
            Parts(i => i.Names, (place, name) => new IngredientNameRow(place, name)),
            Parts(i => i.Numbers, (place, number) => new RegistryNumberRow(place, number)),
            Parts(i => i.Functions, (place, function) => new IngredientFunctionRow(place, function)),
            Parts(i => i.Properties, (place, figure) => new PropertyFigureRow(place, figure)),
            Parts(i => i.FattyAcidProfiles, (place, profile) => new FattyAcidProfileRow(place, profile)),
            [.. ingredients.SelectMany(i => i.FattyAcidProfiles.SelectMany((profile, p) => profile.Shares.Select(
                (share, ordinal) => new FattyAcidShareRow(new RowPlace(release, i.Id, ordinal), p, share))))],
            Parts(i => i.TriacylglycerolProfiles, (place, profile) => new TriacylglycerolProfileRow(place, profile)),
            [.. ingredients.SelectMany(i => i.TriacylglycerolProfiles.SelectMany((profile, p) => profile.Shares.Select(
                (share, ordinal) => new TriacylglycerolShareRow(new RowPlace(release, i.Id, ordinal), p, share))))],
            Parts(i => i.Constituents, (place, constituent) => new ConstituentRow(place, constituent)),
            Single(i => i.Description, (place, description) => new IngredientDescriptionRow(place, description)),
            Single(i => i.Charge, (place, charge) => new IngredientChargeRow(place, charge)),
            Parts(i => i.Parts, (place, part) => new CompositePartRow(place, part)),
            Parts(i => i.UsageLevels, (place, level) => new UsageLevelRow(place, level)),
            Parts(i => i.Handling, (place, note) => new HandlingNoteRow(place, note)),
            Parts(i => i.SubstitutionGroups, (place, membership) => new SubstitutionMembershipRow(place, membership)),
            Parts(i => i.BodyNotes, (place, note) => new BodyNoteRow(place, note)),
            Parts(i => i.Comedogenic, (place, note) => new ComedogenicNoteRow(place, note)),
            Parts(i => i.Cautions, (place, caution) => new CautionRow(place, caution)),
            .. RegulationRows.Of(release, content),
            [.. content.Needs.Select((need, ordinal) => new NeedRow(release, ordinal, need))],
            [.. content.Needs.SelectMany(n => n.Effects.Select((effect, ordinal) => new NeedEffectRow(release, ordinal, n.Id, effect)))],
        ];

        IReadOnlyCollection<ContentRow> Single<T>(Func<Ingredient, T?> statement, Func<RowPlace, T, ContentRow> row)
            where T : Statement =>
            Parts(i => statement(i) is { } known ? [known] : Array.Empty<T>(), row);

        IReadOnlyCollection<ContentRow> Parts<T>(Func<Ingredient, IReadOnlyList<T>> list, Func<RowPlace, T, ContentRow> row) =>
            [.. ingredients.SelectMany(i => list(i).Select((part, ordinal) => row(new RowPlace(release, i.Id, ordinal), part)))];
    }
}
