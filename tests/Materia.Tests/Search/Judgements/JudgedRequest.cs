using Materia.Catalogue;
using Materia.Search;

namespace Materia.Tests.Search.Judgements;

/// <summary>Reads the query strings of judged property questions; only the parameters that they use.</summary>
internal static class JudgedRequest
{
    private const int Deepest = 20;

    public static SearchRequest Of(Judgement judgement) =>
        judgement.Class == "property" ? judgement.Query.Split('&').Aggregate(new SearchRequest { Limit = Deepest }, With) : new SearchRequest { Text = judgement.Query, Limit = Deepest };

    private static SearchRequest With(SearchRequest request, string parameter)
    {
        var (name, value) = (parameter[..parameter.IndexOf('=')], parameter[(parameter.IndexOf('=') + 1)..]);
        switch (name)
        {
            case "text":
                return request with { Text = value };
            case "kind":
                return request with { Kinds = [Word<IngredientKind>(value)] };
            case "origin":
                return request with { Origins = [Word<OriginKind>(value)] };
            case "excludeOrigin":
                return request with { ExcludedOrigins = [Word<OriginKind>(value)] };
            case "charge":
                return request with { Charges = [Word<IonicCharge>(value)] };
            case "group":
                return request with { Groups = [value] };
            case "rangeMatch":
                return request with { RangeMatch = Word<RangeMatch>(value) };
            case "sort":
                SearchSort.TryParse(value, out var sort).ShouldBeTrue(value);
                return request with { Sort = sort };
            case "acid":
                var colon = value.LastIndexOf(':');
                return request with { Acids = new Dictionary<string, DecimalRange>(request.Acids) { [value[..colon]] = Range(value[(colon + 1)..]) } };
            default:
                PropertyGroups.TryParse(name, out var group).ShouldBeTrue(name);
                return request with { Properties = new Dictionary<PropertyGroup, DecimalRange>(request.Properties) { [group] = Range(value) } };
        }
    }

    private static T Word<T>(string text)
        where T : struct, Enum
    {
        KebabCase<T>.TryParse(text, out var value).ShouldBeTrue(text);
        return value;
    }

    private static DecimalRange Range(string text)
    {
        DecimalRange.TryParse(text, out var range).ShouldBeTrue(text);
        return range;
    }
}
