using System.Globalization;
using Materia.Catalogue;
using Materia.Chemistry.Melting;
using Materia.Tests.Checks;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>
/// Samples of the check values as ingredients, so that a check goes the way a maker's blend goes. The ratio of saturated acids in
/// the middle is the one that the catalogue holds for that sort of fat; the middle of ranges stands for a sample known by ranges only, and what print does not name is filled in as the catalogue's fat
/// of that sort has it.
/// </summary>
internal static class MeltingSamples
{
    private static readonly Dictionary<Chain, string> Symbols = new()
    {
        [new(16, ChainKind.Saturated)] = "16:0",
        [new(18, ChainKind.Saturated)] = "18:0",
        [new(20, ChainKind.Saturated)] = "20:0",
        [new(18, ChainKind.CisMonoene)] = "18:1",
        [new(18, ChainKind.Diene)] = "18:2",
    };

    /// <summary>The sample <paramref name="key"/>, with the middle ratio of the catalogue's <paramref name="like"/>.</summary>
    /// <param name="key">The sample's id in the compositions.</param>
    /// <param name="like">An ingredient of the same sort; <see langword="null"/> to go by the rule for its acids.</param>
    /// <param name="hydrogenated">Turns all unsaturated C18 acids into stearic acid: a guess at a feed hydrogenated to the end.</param>
    public static Ingredient Of(string key, string? like, bool hydrogenated = false)
    {
        var printed = MeltingFiles.Compositions[key].ToList();
        var fats = printed.Where(p => p.Basis == "TAG %" && p.Component != "rest").Select(p => (Species(p.Component), Number(p.Percent))).ToList();
        var acids = fats.Count > 0 ? AcidsOf(fats) : Acids(printed.Where(p => p.Basis.StartsWith("FA wt", StringComparison.Ordinal)));
        acids = like is null ? acids : Filled(acids, SeedCatalogue.Ingredient(like));
        var ranges = Ranges(printed.Where(p => p.Basis.StartsWith("FA wt", StringComparison.Ordinal)));
        if (hydrogenated)
        {
            // How far the acids of the saturated feed may range follows from nothing that is printed.
            acids = [.. acids.GroupBy(a => a.Acid is "18:1" or "18:2" or "18:3" ? "18:0" : a.Acid == "16:1" ? "16:0" : a.Acid, (a, g) => (a, g.Sum(s => s.Percent)))];
            ranges = [];
        }

        return new()
        {
            Id = "sample-" + key.ToLowerInvariant(),
            Kind = IngredientKind.Butter,
            Names = [new() { Text = key, Kind = NameKind.Common, Language = "en", Evidence = Evidence.Published, Source = "test", Locator = "1" }],
            FattyAcidProfiles = ranges.Length == 0 ? [TestFat.Sample(acids)] : [TestFat.Sample(acids), TestFat.Range(ranges)],
            TriacylglycerolProfiles = fats.Count == 0 ? [] : [new() { Label = key, Shares = [.. fats.Select(f => new TriacylglycerolShare { Species = f.Item1, Typical = (decimal)f.Item2, Evidence = Evidence.Published, Source = "test", Locator = "1" })] }],
            Properties = [.. hydrogenated ? [] : Iodine(printed), .. like is null ? [] : SeedCatalogue.Ingredient(like).Properties.Where(p => p.Property == Property.MiddlePositionSaturation)],
        };
    }

    private static string Species(string component) => component == "S3 (PPS+PSS)" ? "PPS+PSS" : component;

    /// <summary>The acids of a table of triacylglycerols: they only generate the few percent that the table does not name.</summary>
    private static List<(string Acid, double Percent)> AcidsOf(IEnumerable<(string Species, double Percent)> fats)
    {
        var mass = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (joint, percent) in fats)
        {
            var parts = joint.Split(TriacylglycerolSpecies.Joint);
            foreach (var fat in parts.Select(p => TriacylglycerolName.Parse(p)!.Value))
            {
                foreach (var chain in (Chain[])[fat.Sn1, fat.Sn2, fat.Sn3])
                {
                    mass[Symbols[chain]] = mass.GetValueOrDefault(Symbols[chain]) + (percent / parts.Length * chain.AcidMolarMass);
                }
            }
        }

        var sum = mass.Values.Sum();
        return [.. mass.Select(m => (m.Key, 100 * m.Value / sum))];
    }

    private static List<(string Acid, double Percent)> Acids(IEnumerable<(string Basis, string Component, string Percent)> printed) =>
    [
        .. printed.Where(p => !p.Percent.StartsWith('<'))
            .GroupBy(p => p.Component.Split(' ')[0].TrimStart('C'), p => Number(p.Percent))
            .Select(g => (g.Key, g.Average()))
            .Where(a => a.Item2 > 0),
    ];

    /// <summary>
    /// What print leaves unnamed, where it is more than 3 % (an analysis that names all its acids adds up to more), shared out among the
    /// acids that the catalogue's fat of that sort holds beside the named ones.
    /// </summary>
    private static List<(string Acid, double Percent)> Filled(List<(string Acid, double Percent)> acids, Ingredient like)
    {
        var rest = 100 - acids.Sum(a => a.Percent);
        var named = acids.Select(a => a.Acid).ToHashSet(StringComparer.Ordinal);
        var others = like.FattyAcidProfiles.Single(p => p.Kind == ProfileKind.Sample && (p.Used || like.FattyAcidProfiles.Count(q => q.Kind == ProfileKind.Sample) == 1)).Shares
            .Where(s => s.Typical > 0 && !named.Contains(s.Acid.Split('n')[0].TrimEnd('-'))).ToList();
        var sum = others.Sum(s => (double)s.Typical!.Value);
        return rest > 3 && sum > 0 ? [.. acids, .. others.Select(s => (s.Acid, rest * (double)s.Typical!.Value / sum))] : acids;
    }

    /// <summary>The range of the class's iodine value, where both ends are printed.</summary>
    private static IEnumerable<Figure> Iodine(IEnumerable<(string Basis, string Component, string Percent)> printed)
    {
        decimal[] ends = [.. printed.Where(p => p.Component is "IV low (class)" or "IV high (class)").Select(p => decimal.Parse(p.Percent, CultureInfo.InvariantCulture))];
        return ends.Length == 2 ? [TestFat.Figure(Property.IodineValue, null, ends.Min(), ends.Max())] : [];
    }

    /// <summary>What is printed as a range, in one line or in two.</summary>
    private static (string Acid, decimal Low, decimal High)[] Ranges(IEnumerable<(string Basis, string Component, string Percent)> printed) =>
    [
        .. printed.Where(p => !p.Percent.StartsWith('<'))
            .GroupBy(p => p.Component.Split(' ')[0].TrimStart('C'), p => p.Percent.Split('-').Select(t => decimal.Parse(t, CultureInfo.InvariantCulture)))
            .Select(g => (g.Key, g.SelectMany(v => v).Min(), g.SelectMany(v => v).Max()))
            .Where(r => r.Item2 < r.Item3),
    ];

    /// <summary>A number, or the middle of a range.</summary>
    private static double Number(string text) => text.Split('-').Average(t => double.Parse(t, CultureInfo.InvariantCulture));
}
