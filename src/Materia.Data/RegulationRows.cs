using Materia.Catalogue;
using Materia.Catalogue.Regulated;
using Materia.Data.Rows;

namespace Materia.Data;

/// <summary>A release's limits and allergens as rows.</summary>
internal static class RegulationRows
{
    /// <summary>The rows of each table, a table after the tables that it refers to.</summary>
    public static IEnumerable<IReadOnlyCollection<ContentRow>> Of(int release, CatalogueContent content)
    {
        var limits = content.Limits;
        return
        [
            [.. limits.Select((limit, ordinal) => new RegulatedLimitRow(release, ordinal, limit))],
            Parts(l => l.Members, (id, ordinal, member) => new LimitMemberRow(release, ordinal, id, member)),
            Parts(l => l.Scope.Sites, (id, ordinal, site) => new LimitSiteRow(release, ordinal, id, site)),
            Parts(l => l.Scope.Uses, (id, ordinal, use) => new LimitUseRow(release, ordinal, id, use, isExcepted: false)),
            Parts(l => l.Scope.ExceptUses, (id, ordinal, use) => new LimitUseRow(release, ordinal, id, use, isExcepted: true)),
            Parts(l => l.Scope.IfraCategories, (id, ordinal, category) => new LimitCategoryRow(release, ordinal, id, category)),
            Parts(l => l.ExceptIngredients, (id, ordinal, ingredient) => new LimitExceptionRow(release, ordinal, id, ingredient)),
            [.. content.Allergens.Select((allergen, ordinal) => new AllergenRow(release, ordinal, allergen))],
            [.. content.Allergens.SelectMany(a => a.Members.Select((member, ordinal) => new AllergenMemberRow(release, ordinal, a.Id, member)))],
        ];

        IReadOnlyCollection<ContentRow> Parts<T>(Func<Limit, IReadOnlyList<T>> list, Func<string, int, T, ContentRow> row) =>
            [.. limits.SelectMany(l => list(l).Select((part, ordinal) => row(l.Id, ordinal, part)))];
    }
}
