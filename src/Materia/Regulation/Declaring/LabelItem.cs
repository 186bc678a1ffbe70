using Materia.Catalogue;
using Materia.Catalogue.Regulated;

namespace Materia.Regulation.Declaring;

/// <summary>A name on its way to a label, with everything that it stands for.</summary>
internal sealed class LabelItem(string name, bool isColourant, string? note)
{
    public string Name { get; set; } = name;

    public bool IsColourant { get; } = isColourant;

    public string? Note { get; } = note;

    public Amount Share { get; private set; } = Amount.None;

    /// <summary>The lines that bring it, each with what it brings.</summary>
    public List<(string Line, Amount Share)> Lines { get; } = [];

    public HashSet<string> Rules { get; } = [];

    /// <summary>The share that decides the place [%].</summary>
    public decimal Weight => Share.Typical ?? (Share.Low + Share.High) / 2;

    public void Add(string line, Amount share, IEnumerable<string> rules)
    {
        Share += share;
        Lines.Add((line, share));
        Rules.UnionWith(rules);
    }
}

/// <summary>Takes the materials of a formula apart into the names of a label.</summary>
internal sealed class LabelItems
{
    private readonly Dictionary<string, LabelItem> byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly RegulatedFormula formula;
    private readonly Authority law;

    private LabelItems(RegulatedFormula formula, Authority law)
    {
        this.formula = formula;
        this.law = law;
    }

    /// <summary>The names in the order in which the formula first brings them, equal names merged.</summary>
    public List<LabelItem> All { get; } = [];

    public List<UnresolvedName> Unresolved { get; } = [];

    /// <summary>Whether anything was put under the word for perfume.</summary>
    public bool HasPerfume { get; private set; }

    /// <summary>Takes the formula apart.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="law">The law whose names are used.</param>
    /// <param name="namesOils">Whether essential oils stand under their own names in place of the word for perfume.</param>
    public static LabelItems Of(RegulatedFormula formula, Authority law, bool namesOils)
    {
        var items = new LabelItems(formula, law);
        foreach (var line in formula.Lines.Where(l => l.Percent > 0))
        {
            foreach (var part in MaterialPartShare.Of(line.Ingredient, formula.Release))
            {
                items.Add(line, part, namesOils);
            }
        }

        return items;
    }

    /// <summary>The word for perfume in a market.</summary>
    public static string PerfumeWord(Authority law, ProductUse? use) => (law, use?.Site) switch
    {
        (Authority.Us, BodySite.Lips) => "Flavor",
        (Authority.Us, _) => "Fragrance",
        (_, BodySite.Lips) => "Aroma",
        _ => "Parfum",
    };

    private void Add(RegulatedLine line, MaterialPartShare part, bool namesOils)
    {
        var share = new Amount(part.Low, part.Typical, part.High) * (line.Percent / 100);
        if (LabelName.IsFragrance(part) && !(namesOils && part.Ingredient?.Kind == IngredientKind.EssentialOil))
        {
            HasPerfume = true;
            Item(PerfumeWord(law, formula.Use), false, null).Add(line.Name, share, [law == Authority.Us ? "US-ING-02" : "EU-ING-09"]);
            return;
        }

        var name = LabelName.Of(part, law);
        if (name.Text is null)
        {
            Unresolved.Add(new UnresolvedName(
                line.Name, share.Typical ?? share.High, $"Ask the supplier of \"{part.Name}\" for its INCI name, and give it as inciName of an own material; of a mixture ask for every part with its share."));
        }

        var item = Item(name.Text ?? $"[{part.Name}]", LabelName.IsColourant(part), name.Note);
        item.Add(line.Name, share, name.Rules);
        if (name.Text?.EndsWith("(nano)", StringComparison.OrdinalIgnoreCase) == true && law != Authority.Us)
        {
            item.Rules.Add("EU-ING-08");
        }
    }

    private LabelItem Item(string name, bool isColourant, string? note)
    {
        if (!byName.TryGetValue(name, out var item))
        {
            item = new LabelItem(name, isColourant, note);
            byName.Add(name, item);
            All.Add(item);
        }

        return item;
    }
}
