using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Documents;

/// <summary>The OpenAPI document: that it is the committed one, and that it says enough.</summary>
[Collection(nameof(SqliteApi))]
public sealed class OpenApiTests(SqliteApi api)
{
    private const string Url = "/openapi/materia.v1.json";

    private static readonly string[] Methods = ["get", "put", "post", "delete", "patch"];

    [Fact]
    public async Task Served_IsTheCommittedDocument()
    {
        var served = await api.Client.GetJsonAsync(Url);

        var committed = JsonNode.Parse(await File.ReadAllTextAsync(Repository.File("openapi/materia.v1.json"), TestContext.Current.CancellationToken));

        JsonNode.DeepEquals(served, committed).ShouldBeTrue("openapi/materia.v1.json differs from what the service says of itself; build src/Materia.Api and commit the file.");
        served["openapi"]!.GetValue<string>().ShouldStartWith("3.1");
    }

    [Fact]
    public async Task EveryOperation_SaysWhatItDoesAndHasTags()
    {
        foreach (var (name, operation) in await OperationsAsync())
        {
            operation["summary"]!.GetValue<string>().Length.ShouldBeGreaterThan(10, name);
            operation["description"]!.GetValue<string>().Length.ShouldBeGreaterThan(40, name);
            operation["operationId"]!.GetValue<string>().ShouldNotBeNullOrEmpty(name);
            operation["tags"]!.AsArray().Count.ShouldBe(1, name);
        }
    }

    [Fact]
    public async Task EveryParameter_HasADescriptionAndPathParametersAnExample()
    {
        foreach (var (name, operation) in await OperationsAsync())
        {
            foreach (var parameter in operation["parameters"]?.AsArray() ?? [])
            {
                var about = $"{name} {parameter!["name"]}";
                parameter["description"]!.GetValue<string>().Length.ShouldBeGreaterThan(10, about);
                parameter["schema"]!["type"].ShouldNotBeNull(about);
                if (parameter["in"]!.GetValue<string>() == "path")
                {
                    parameter["example"].ShouldNotBeNull(about);
                }
            }
        }
    }

    [Fact]
    public async Task EveryCatalogueOperation_ListsItsProblems()
    {
        foreach (var (name, operation) in (await OperationsAsync()).Where(o => o.Name.Contains("/v1/", StringComparison.Ordinal)))
        {
            var responses = operation["responses"]!.AsObject();
            string[] expected = name.StartsWith("post", StringComparison.Ordinal)
                ? ["400", "406", "413", "415", "422", "429", "500", "503"]
                : ["400", "406", "500", "503"];
            expected = name.Contains('{', StringComparison.Ordinal) ? [.. expected, "404"] : expected;
            foreach (var status in expected)
            {
                (responses[status]?["content"]?["application/problem+json"]?["schema"]).ShouldNotBeNull($"{name} {status}");
                responses[status]!["description"]!.GetValue<string>().Length.ShouldBeGreaterThan(10, $"{name} {status}");
            }
        }
    }

    [Fact]
    public async Task EveryCatalogueRead_Lists304WithItsEntityTag()
    {
        foreach (var (name, operation) in (await OperationsAsync()).Where(o => o.Name.StartsWith("get /v1/", StringComparison.Ordinal)))
        {
            (operation["responses"]!["304"]?["headers"]?["ETag"]).ShouldNotBeNull(name);
            operation["responses"]!["200"]!["headers"]!["Materia-Release"].ShouldNotBeNull(name);
        }
    }

    [Fact]
    public async Task EveryExample_WorksAsPasted()
    {
        foreach (var (name, operation) in await OperationsAsync())
        {
            var path = name.Split(' ')[1];
            if (name.StartsWith("post", StringComparison.Ordinal))
            {
                var body = operation["requestBody"]!["content"]!["application/json"]!["example"];
                body.ShouldNotBeNull(name);
                using var answer = await api.Client.PostAsJsonAsync(path, body, TestContext.Current.CancellationToken);
                answer.StatusCode.ShouldBe(HttpStatusCode.OK, name + await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
                continue;
            }

            foreach (var url in operation["x-example-calls"]?.AsArray().Select(u => u!.GetValue<string>()) ?? [path])
            {
                using var answer = await api.Client.GetAsync(url, TestContext.Current.CancellationToken);
                answer.StatusCode.ShouldBe(HttpStatusCode.OK, url);
            }
        }
    }

    [Fact]
    public async Task EveryParameterExample_IsTaken()
    {
        foreach (var (name, operation) in (await OperationsAsync()).Where(o => o.Name.StartsWith("get", StringComparison.Ordinal)))
        {
            var parameters = operation["parameters"]?.AsArray() ?? [];
            var path = parameters.Where(p => p!["in"]!.GetValue<string>() == "path")
                .Aggregate(name.Split(' ')[1], (url, p) => url.Replace("{" + p!["name"] + "}", p["example"]!.ToString(), StringComparison.Ordinal));
            foreach (var parameter in parameters.Where(p => p!["in"]!.GetValue<string>() == "query" && p["example"] is not null))
            {
                var example = parameter!["example"] is JsonArray several ? string.Join(',', several.Texts()) : parameter["example"]!.ToString();
                var required = name.EndsWith("/v1/suggestions", StringComparison.Ordinal) && parameter["name"]!.GetValue<string>() != "text" ? "text=shea&" : "";
                var url = $"{path}?{required}{parameter["name"]}={Uri.EscapeDataString(example)}";
                using var answer = await api.Client.GetAsync(url, TestContext.Current.CancellationToken);
                answer.StatusCode.ShouldBe(HttpStatusCode.OK, url);
            }
        }
    }

    [Fact]
    public async Task Schemas_NumbersAreNumbersOnly()
    {
        var text = (await api.Client.GetJsonAsync(Url)).ToJsonString();

        text.ShouldNotContain("[\"number\",\"string\"]");
        text.ShouldNotContain("[\"string\",\"number\"]");
        text.ShouldNotContain("[\"integer\",\"string\"]");
        text.ShouldNotContain("[\"null\",\"number\",\"string\"]");
    }

    private async Task<IReadOnlyList<(string Name, JsonObject Operation)>> OperationsAsync()
    {
        var document = await api.Client.GetJsonAsync(Url);
        var operations = document["paths"]!.AsObject()
            .SelectMany(p => p.Value!.AsObject().Where(o => Methods.Contains(o.Key)).Select(o => ($"{o.Key} {p.Key}", o.Value!.AsObject())))
            .ToList();
        operations.Count.ShouldBeGreaterThan(10);
        return operations;
    }
}
