using System.Reflection;
using System.Text.Json;
using System.Xml.Linq;

namespace Materia.Seed.Schema;

/// <summary>The summaries of an assembly's documentation comments, from the XML file that the compiler writes beside it.</summary>
internal sealed class DocComments
{
    private readonly Dictionary<string, string> summaries;

    private DocComments(Dictionary<string, string> summaries) => this.summaries = summaries;

    /// <summary>Reads the comments of <paramref name="assembly"/>.</summary>
    /// <exception cref="FileNotFoundException">The documentation file does not stand beside the assembly.</exception>
    public static DocComments Of(Assembly assembly)
    {
        var file = Path.ChangeExtension(assembly.Location, ".xml");
        return new(XDocument.Load(file)
            .Descendants("member")
            .Where(m => m.Element("summary") is not null)
            .ToDictionary(m => m.Attribute("name")!.Value, m => Plain(m.Element("summary")!), StringComparer.Ordinal));
    }

    /// <summary>The summary of <paramref name="type"/>, or <see langword="null"/> when it is of another assembly.</summary>
    public string? Summary(Type type) => summaries.GetValueOrDefault($"T:{type.FullName}");

    /// <summary>The summary of the property whose JSON name is <paramref name="member"/>.</summary>
    public string? Summary(Type type, string member)
    {
        var property = type.GetProperties().First(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name) == member);
        return summaries.GetValueOrDefault($"P:{property.DeclaringType!.FullName}.{property.Name}");
    }

    /// <summary>The text of a comment on one line, references as the last part of their name.</summary>
    private static string Plain(XElement summary)
    {
        var parts = summary.DescendantNodes().Select(node => node switch
        {
            XText text => text.Value,
            XElement element when element.Attribute("cref") is { } reference => reference.Value[(reference.Value.LastIndexOfAny(['.', ':']) + 1)..],
            XElement element when element.Attribute("langword") is { } word => word.Value,
            _ => "",
        });
        return string.Join(' ', string.Concat(parts).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
