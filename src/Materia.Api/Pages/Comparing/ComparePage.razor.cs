using Materia.Api.Pages.Formulas;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Comparing;

/// <summary>Up to four ingredients side by side.</summary>
public partial class ComparePage
{
    /// <summary>The most ingredients that fit side by side.</summary>
    public const int Most = 4;

    private static readonly double[] Temperatures = [10, 20, 25, 30, 35];

    /// <summary>The request.</summary>
    [CascadingParameter]
    public HttpContext Context { get; set; } = null!;

    /// <summary>The release.</summary>
    [Inject]
    public required ServedRelease Served { get; set; }

    private IReadOnlyList<Ingredient> Items { get; set; } = [];

    private IReadOnlyList<string> Unknown { get; set; } = [];

    private IReadOnlyList<(Property Property, IReadOnlyList<Figure?> Figures)> Rows { get; set; } = [];

    private IReadOnlyList<(string Acid, IReadOnlyList<FattyAcidShare?> Shares)> Acids { get; set; } = [];

    private IReadOnlyList<BlendMelting?> Melting { get; set; } = [];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        var query = Context.Request.Query;
        var asked = query["ids"].Concat(query["add"]).SelectMany(v => (v ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).Distinct().Take(2 * Most).ToList();
        var found = asked.Select(a => (Asked: a, Ingredient: Find(a))).ToList();
        Unknown = [.. found.Where(f => f.Ingredient is null).Select(f => f.Asked.Length <= 60 ? f.Asked : f.Asked[..60])];
        Items = [.. found.Select(f => f.Ingredient).OfType<Ingredient>().Distinct().Take(Most)];
        Rows = [.. Enum.GetValues<Property>().Select(p => (p, (IReadOnlyList<Figure?>)[.. Items.Select(i => Used(i, p))])).Where(r => r.Item2.Any(f => f is not null))];
        var profiles = Items.Select(Profile).ToList();
        Acids = [.. profiles.SelectMany(p => p).GroupBy(s => s.Acid).OrderByDescending(g => g.Max(Share)).Take(10)
            .Select(g => (g.Key, (IReadOnlyList<FattyAcidShare?>)[.. profiles.Select(p => p.FirstOrDefault(s => s.Acid == g.Key))]))];
        Melting = [.. Items.Select(i => IngredientMelting.Of(i, Served.Release) is { Absent: null } m ? m : null)];
    }

    private Ingredient? Find(string text) =>
        Served.Release.FindIngredient(FormulaEdit.Find(text, Served) ?? Served.Release.FindPresentId(text) ?? "");

    private string Without(Ingredient item) => "/compare?ids=" + string.Join(',', Items.Where(i => i != item).Select(i => i.Id));

    private static Figure? Used(Ingredient item, Property property)
    {
        var all = item.Properties.Where(f => f.Property == property).ToList();
        return all.Find(f => f.Used) ?? all.FirstOrDefault();
    }

    private static IReadOnlyList<FattyAcidShare> Profile(Ingredient item)
    {
        var acids = item.FattyAcidProfiles.Where(p => p.Of == ProfilePart.Acids).ToList();
        return (acids.Find(p => p.Used) ?? acids.Find(p => p.Kind == ProfileKind.Sample) ?? acids.FirstOrDefault())?.Shares ?? [];
    }

    private static decimal Share(FattyAcidShare share) => share.Typical ?? share.High ?? share.Low ?? 0;
}
