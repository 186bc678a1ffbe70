using System.Reflection;
using Materia.Chemistry;

namespace Materia.Tests.Chemistry;

public class MethodTests
{
    [Fact]
    public void All_EverySource_IsInTheSeedData()
    {
        foreach (var method in Methods.All.Values)
        {
            method.Sources.ShouldNotBeEmpty(method.Id);
            method.Sources.Where(s => SeedCatalogue.Release.FindSource(s) is null).ShouldBeEmpty(method.Id);
        }
    }

    [Fact]
    public void All_EveryText_IsThere()
    {
        foreach (var method in Methods.All.Values)
        {
            foreach (var text in new[] { method.Name, method.Equation, method.Validity, method.Error })
            {
                text.ShouldNotBeNullOrWhiteSpace(method.Id);
            }

            method.Id.ShouldMatch("^[a-z0-9]+(-[a-z0-9]+)*$");
        }
    }

    [Fact]
    public void All_MethodsNamedByResults_AreListed()
    {
        var blend = TestFat.Blend((SeedCatalogue.Ingredient("olive-oil"), 0.9), (SeedCatalogue.Ingredient("sacha-inchi-oil"), 0.1));
        var oxidation = BlendOxidation.Of(blend);

        string?[] named =
        [
            FattyAcidComposition.Of(blend).Method, IodineValue.Of(blend).Method, SaponificationValue.Of(blend).Method,
            SaponificationValue.InSodiumHydroxide(SaponificationValue.Of(blend)).Method, BlendDensity.Of(blend).Method, BlendFlow.Of(blend).Method,
            oxidation.CoxValue.Method, oxidation.RateAt30To20.Method,
        ];

        named.Where(m => !Methods.All.ContainsKey(m!)).ShouldBeEmpty();
    }

    [Fact]
    public void Rules_EveryPublicMember_IsDocumented()
    {
        var assembly = typeof(Methods).Assembly;
        var documentation = File.ReadAllText(Path.ChangeExtension(assembly.Location, ".xml"));
        var rules = assembly.GetExportedTypes().Where(t => t.Namespace == "Materia.Chemistry.Rules").ToList();
        rules.Count.ShouldBeGreaterThan(10);
        foreach (var rule in rules)
        {
            documentation.ShouldContain($"T:{rule.FullName}\"");
            foreach (var method in rule.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            {
                documentation.ShouldContain($"M:{rule.FullName}.{method.Name}");
            }
        }
    }

    [Fact]
    public void Rules_EverySourceNamedInTheDocumentation_IsInTheSeedData()
    {
        var documentation = File.ReadAllText(Path.ChangeExtension(typeof(Methods).Assembly.Location, ".xml"));
        var keys = System.Text.RegularExpressions.Regex.Matches(documentation, @"<c>([a-z][a-z0-9]*(?:-[a-z0-9]+)*-(?:19|20)\d\d[a-z-]*|a(?:ocs|stm)-[a-z0-9-]+|iso-[0-9-]+)</c>")
            .Select(m => m.Groups[1].Value).Distinct().ToList();

        keys.Count.ShouldBeGreaterThan(10);
        keys.Where(k => SeedCatalogue.Release.FindSource(k) is null).ShouldBeEmpty();
    }
}
