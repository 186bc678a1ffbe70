using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Schema;

/// <summary>The JSON Schemas of the seed files, made from the records so that an editor can check and complete while typing.</summary>
public static class SeedSchema
{
    private static readonly JsonSerializerOptions Layout =
        new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schemas by their path relative to the seed directory.</summary>
    public static IReadOnlyDictionary<string, string> All() => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [$"{SeedDirectory.Schema}/ingredient.schema.json"] = Of(typeof(Ingredient)),
        [$"{SeedDirectory.Schema}/source.schema.json"] = Of(typeof(Source)),
    };

    /// <summary>A fault for each schema that is missing or not what the records give.</summary>
    public static IReadOnlyList<SeedFault> Check(string directory) =>
    [
        .. All()
            .Where(s => !File.Exists(Path.Combine(directory, s.Key)) || File.ReadAllText(Path.Combine(directory, s.Key)) != s.Value)
            .Select(s => new SeedFault(s.Key, null, "the schema is missing or out of date; run schema and commit the result")),
    ];

    /// <summary>Writes the schemas below <paramref name="directory"/>.</summary>
    public static void Write(string directory)
    {
        Directory.CreateDirectory(Path.Combine(directory, SeedDirectory.Schema));
        foreach (var (path, text) in All())
        {
            File.WriteAllText(Path.Combine(directory, path), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
    }

    private static string Of(Type type)
    {
        var comments = DocComments.Of(type.Assembly);
        var exporter = new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = (context, node) => Describe(context, node, comments),
        };
        var schema = CatalogueJson.Options.GetJsonSchemaAsNode(type, exporter).AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", type.Name);
        return schema.ToJsonString(Layout) + "\n";
    }

    private static JsonNode Describe(JsonSchemaExporterContext context, JsonNode node, DocComments comments)
    {
        var text = context.PropertyInfo is { } property
            ? comments.Summary(property.DeclaringType, property.Name)
            : comments.Summary(context.TypeInfo.Type);
        if (node is JsonObject schema && text is not null)
        {
            schema.Insert(0, "description", text);
        }

        return node;
    }
}
