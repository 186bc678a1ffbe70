using Materia.Catalogue;
using Materia.Search.Analysis;
using Materia.Search.Indexing;

namespace Materia.Search.Sorting;

/// <summary>The place of each ingredient in every order but relevance, worked out once.</summary>
internal sealed class SortOrders
{
    private readonly Dictionary<SearchSort, int[]> places = [];

    /// <summary>Sorts the ingredients in every way that can be asked for.</summary>
    public SortOrders(IReadOnlyList<Ingredient> ingredients, IngredientColumns columns)
    {
        var names = ingredients.Select(i => string.Join(' ', Wording.Of(i.CommonName()).Select(w => w.Plain))).ToArray();
        int[] byName = [.. Enumerable.Range(0, names.Length).OrderBy(i => names[i], StringComparer.Ordinal)];
        places[new SearchSort(SortKey.Name)] = PlacesIn(byName);
        places[new SearchSort(SortKey.Name, true)] = PlacesIn([.. Enumerable.Range(0, names.Length).OrderByDescending(i => names[i], StringComparer.Ordinal)]);
        AddFigure(SortKey.Melting, PropertyGroup.Melting);
        AddFigure(SortKey.Iodine, PropertyGroup.Iodine);
        AddFigure(SortKey.Saponification, PropertyGroup.Saponification);
        AddFigure(SortKey.Density, PropertyGroup.Density);
        AddFigure(SortKey.Viscosity, PropertyGroup.Viscosity);
        AddFigure(SortKey.SolidAt20, PropertyGroup.SolidAt20);
        AddFigure(SortKey.SolidAt32, PropertyGroup.SolidAt32);
        AddFigure(SortKey.ClearPoint, PropertyGroup.ClearPoint);
        AddFigure(SortKey.Hlb, PropertyGroup.Hlb);
        AddFigure(SortKey.CationExchangeCapacity, PropertyGroup.CationExchangeCapacity);
        AddFigure(SortKey.Swelling, PropertyGroup.Swelling);
        AddFigure(SortKey.ShelfLife, PropertyGroup.ShelfLife);

        void AddFigure(SortKey key, PropertyGroup group)
        {
            var figures = columns.Figures(group);
            var known = byName.Where(i => figures[i].Count > 0).ToArray();
            var unknown = byName.Where(i => figures[i].Count == 0).ToArray();
            places[new SearchSort(key)] = PlacesIn([.. known.OrderBy(Value), .. unknown]);
            places[new SearchSort(key, true)] = PlacesIn([.. known.OrderByDescending(Value), .. unknown]);

            decimal Value(int ingredient) => figures[ingredient][0].Central;
        }
    }

    /// <summary>The place of each ingredient in an order, by ordinal; relevance on its own is by name.</summary>
    public int[] Places(SearchSort sort) => places[sort.By == SortKey.Relevance ? new SearchSort(SortKey.Name) : sort];

    private static int[] PlacesIn(int[] order)
    {
        var places = new int[order.Length];
        for (var place = 0; place < order.Length; place++)
        {
            places[order[place]] = place;
        }

        return places;
    }
}
