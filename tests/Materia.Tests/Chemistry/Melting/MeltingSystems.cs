using System.Collections.Concurrent;
using Materia.Catalogue;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry.Melting;

/// <summary>Which composition stands for the system of a printed row: the same sample's, a class's, or that of the catalogue.</summary>
internal static class MeltingSystems
{
    private static readonly Dictionary<string, (string Key, string? Like, Standing Standing)> Known = new(StringComparer.Ordinal)
    {
        ["cocoa butter CB-GH (Ghana)"] = ("CB-GH", "cocoa-butter", Standing.Own),
        ["cocoa butter CB-CI (Ivory Coast)"] = ("CB-CI", "cocoa-butter", Standing.Own),
        ["cocoa butter CB-MY (Malaysia)"] = ("CB-MY", "cocoa-butter", Standing.Own),
        ["palm oil PO-MY"] = ("PO-MY", "palm-oil", Standing.Own),
        ["palm kernel oil PKO-MY"] = ("PKO-MY", null, Standing.Own),
        ["REFINED-PO-TYPICAL"] = ("REFINED-PO-TYPICAL", "palm-oil", Standing.Own),
        ["mango kernel fat MKF-SABAH (3 varieties)"] = ("MKF-SABAH", "mango-butter", Standing.Own),
        ["cocoa butter"] = ("COCOA-BG", "cocoa-butter", Standing.Own),
        ["shea butter"] = ("SHEA-BG", "shea-butter", Standing.Own),
        ["illipe (mowrah) butter"] = ("ILLIPE-MOWRAH-BG", null, Standing.Own),
        ["Borneo tallow (tengkawang)"] = ("BORNEO-TALLOW", "illipe-butter", Standing.Own),
        ["babassu oil"] = ("BABASSU-BG", null, Standing.Own),
        ["palm kernel oil"] = ("PKO-MY", null, Standing.Class),
        ["palm kernel oil, Malaysia"] = ("PKO-MY", null, Standing.Class),
        ["palm oil"] = ("PO-MY", "palm-oil", Standing.Class),
        ["RBD palm oil (contract spec)"] = ("PO-MY", "palm-oil", Standing.Class),
        ["coconut oil"] = ("CNO", null, Standing.Class),
        ["unrefined shea butter"] = ("SHEA-WA", "shea-butter", Standing.Class),
        ["kokum butter"] = ("KOKUM", "kokum-butter", Standing.Class),
        ["cocoa butter form V"] = ("CB-GH", "cocoa-butter", Standing.Class),
        ["PLANT-PO"] = ("PLANT-PO", "palm-oil", Standing.Class),
        ["PLANT-PKO"] = ("PLANT-PKO", null, Standing.Class),
        ["PLANT-PKOL"] = ("PLANT-PKOL", null, Standing.Class),
        ["PLANT-ST-FEED"] = ("PLANT-ST-FEED", "palm-stearin", Standing.Class),
        ["PLANT-ST-IV35"] = ("PLANT-ST-IV35", "palm-stearin", Standing.Class),
        ["PLANT-OLEIN-IV57"] = ("PLANT-OLEIN-IV57", "palm-olein", Standing.Class),
        ["PLANT-HPKO"] = ("PLANT-PKO", null, Standing.Hydrogenated),
        ["PLANT-HPST"] = ("PLANT-ST-FEED", "palm-stearin", Standing.Hydrogenated),
        ["RBD palm olein (contract spec)"] = ("palm-olein", null, Standing.Catalogue),
        ["mutton tallow"] = ("mutton-tallow", null, Standing.Catalogue),
        ["bacuri fat"] = ("bacuri-butter", null, Standing.Catalogue),
        ["MURUMURU-AUTH"] = ("murumuru-butter", null, Standing.Catalogue),
        ["TUCUMA-K-AUTH"] = ("tucuma-butter", null, Standing.Catalogue),
        ["illipe / tengkawang butter (Shorea stenoptera)"] = ("illipe-butter", null, Standing.Catalogue),
        ["commercial cocoa butter (as conditioned in the same test)"] = ("cocoa-butter", null, Standing.Catalogue),
        ["rice bran wax"] = ("rice-bran-wax", null, Standing.Catalogue),
        ["candelilla wax"] = ("candelilla-wax", null, Standing.Catalogue),
        ["carnauba wax"] = ("carnauba-wax", null, Standing.Catalogue),
        ["beeswax"] = ("beeswax", null, Standing.Catalogue),
    };

    private static readonly ConcurrentDictionary<string, BlendMelting> Melted = new(StringComparer.Ordinal);

    /// <summary>What is known of the composition of a printed system; <see langword="null"/> when nothing is.</summary>
    public static Standing? StandingOf(string system) => Known.TryGetValue(system, out var known) ? known.Standing : null;

    /// <summary>The ingredient that stands for a system; <see langword="null"/> when its composition is not known.</summary>
    public static Ingredient? Find(string system) => !Known.TryGetValue(system, out var known) ? null
        : known.Standing == Standing.Catalogue ? SeedCatalogue.Ingredient(known.Key)
        : MeltingSamples.Of(known.Key, known.Like, known.Standing == Standing.Hydrogenated);

    /// <summary>How a system melts by itself; <see langword="null"/> when its composition is not known.</summary>
    public static BlendMelting? Melt(string system) => Known.ContainsKey(system)
        ? Melted.GetOrAdd(system, static s => BlendMelting.Of(TestFat.Blend((Find(s)!, 1))))
        : null;
}

/// <summary>Whose composition stands for a system.</summary>
internal enum Standing
{
    /// <summary>The same sample's, or what the same source prints for the fat.</summary>
    Own,

    /// <summary>The class of fat.</summary>
    Class,

    /// <summary>The class of the feed, all of it saturated.</summary>
    Hydrogenated,

    /// <summary>The catalogue's ingredient of that name.</summary>
    Catalogue,
}
