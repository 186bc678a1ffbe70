using System.Text.RegularExpressions;
using System.Xml.Linq;
using Materia.Api.Tests.Hosting;
using Materia.Formulation;

namespace Materia.Api.Tests.Pages;

/// <summary>Words of the pages: every key that is named exists, none is left over, every method has its lesson.</summary>
public sealed partial class PageTextTests
{
    [Fact]
    public void Keys_NamedInThePages_AllHaveWords()
    {
        var known = Keys("PageText");
        var named = Directory.EnumerateFiles(Repository.File("src/Materia.Api/Pages"), "*.razor*", SearchOption.AllDirectories)
            .SelectMany(f => Named().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value)).Distinct().ToList();

        named.Count.ShouldBeGreaterThan(100);
        named.Where(n => !known.Contains(n)).ShouldBeEmpty();
    }

    [Fact]
    public void Methods_AllHaveALesson()
    {
        var known = Keys("LessonText");

        AllMethods.ById.Keys.Where(m => !known.Contains(m)).ShouldBeEmpty();
        known.Where(k => !AllMethods.ById.ContainsKey(k)).ShouldBeEmpty();
    }

    private static HashSet<string> Keys(string file) =>
        [.. XDocument.Load(Repository.File($"src/Materia.Api/Pages/Text/{file}.resx")).Root!.Elements("data").Select(d => d.Attribute("name")!.Value)];

    [GeneratedRegex("\\bT\\[\"([a-zA-Z0-9.-]+[a-zA-Z0-9])\"[,\\]]")]
    private static partial Regex Named();
}
