using System.Globalization;
using System.Net;
using System.Text;
using System.Xml.Linq;
using CsvHelper;
using Materia.Api.Evaluations;
using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Evaluations;

/// <summary>Evaluations as documents, tables and figures.</summary>
[Collection(nameof(SqliteApi))]
public sealed class DocumentTests(SqliteApi api)
{
    private const string Hostile = """
        { "title": "<script>alert(1)</script> | *mask* =1+1", "market": "eu", "use": "body-lotion",
          "lines": [ { "ingredient": "shea-butter", "percent": 60, "name": "=HYPERLINK(\"x\"), <b>shea</b>" },
                     { "own": { "name": "</td><img src=x onerror=alert(1)>", "kind": "oil", "fattyAcids": [ { "acid": "18:1n-9", "percent": 100 } ] }, "balance": true } ],
          "batch": { "mass": 100, "unit": "g", "scaleResolution": 0.1 } }
        """;

    private static readonly XNamespace SvgNamespace = "http://www.w3.org/2000/svg";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("batch-sheet", "Weighed")]
    [InlineData("handout", "How it is worked out")]
    public async Task Post_AcceptHtml_IsAPageThatHoldsTheFormulaAndLoadsNothing(string document, string words)
    {
        using var answer = await PostAsync(EvaluationExample.Formula, $"?document={document}", "text/html");

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Content.Headers.ContentType!.ToString().ShouldBe("text/html; charset=utf-8");
        answer.Content.Headers.ContentDisposition!.FileName!.ShouldEndWith($"-{document}.html");
        answer.Headers.Vary.ShouldContain("Accept");
        var html = Page(await answer.Content.ReadAsStringAsync(Cancellation));
        html.Value.ShouldContain(words);
        html.Descendants().Attributes().ShouldNotContain(a => a.Name.LocalName == "src" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        html.Descendants().ShouldNotContain(e => e.Name.LocalName == "script" || e.Name.LocalName == "link");
        answer.Headers.GetValues("Content-Security-Policy").Single().ShouldNotContain("unsafe");
    }

    [Fact]
    public async Task Post_BatchSheet_HasTheWeightsOfTheJson()
    {
        var batch = (await api.Client.EvaluateAsync(EvaluationExample.Formula, "?sections=batch"))["batch"]!;

        var sheet = await TextAsync(EvaluationExample.Formula, "", "text/html");

        foreach (var line in batch["lines"]!.AsArray())
        {
            sheet.ShouldContain($">{line!["mass"]!["value"]!.ToJsonString()} g<");
        }
    }

    [Theory]
    [InlineData("text/html")]
    [InlineData("text/markdown")]
    [InlineData("image/svg+xml")]
    public async Task Post_HostileNames_StayText(string type)
    {
        var text = await TextAsync(Hostile, type == "image/svg+xml" ? "?figure=fatty-acids" : "", type);

        // In Markdown a backslash before it makes a character plain.
        var markup = type == "text/markdown" ? text.Replace(@"\<", "", StringComparison.Ordinal) : text;
        markup.ShouldNotContain("<script>");
        markup.ShouldNotContain("<img");
        markup.ShouldNotContain("<b>shea");
        if (type == "text/markdown")
        {
            text.ShouldContain(@"\<script\>alert(1)\</script\> \| \*mask\*");
        }
    }

    [Fact]
    public async Task Post_AcceptCsv_ReadsBackAndStartsNoFormula()
    {
        var rows = Rows(await TextAsync(Hostile, "", "text/csv"));

        rows.Count.ShouldBe(2);
        rows[0]["ingredient"].ShouldBe("shea-butter");
        rows[0]["name"].ShouldBe("'=HYPERLINK(\"x\"), <b>shea</b>");
        rows.Sum(r => decimal.Parse(r["mass"], CultureInfo.InvariantCulture)).ShouldBe(100);
        rows[1]["percent"].ShouldBe("40");
    }

    [Theory]
    [InlineData("melting")]
    [InlineData("flow")]
    [InlineData("fatty-acids")]
    [InlineData("oxidation")]
    [InlineData("allergens")]
    [InlineData("limits")]
    [InlineData("cost")]
    public async Task Post_AcceptSvg_IsADrawingWithNameAndDescription(string figure)
    {
        // The documented example is under no limit that has a number; a body lotion with clove oil is.
        var formula = figure == "limits" ? """{ "use": "body-lotion", "lines": [ { "ingredient": "sunflower-oil", "balance": true }, { "ingredient": "clove-bud-oil", "percent": 0.3 } ] }""" : EvaluationExample.Formula;
        var text = await TextAsync(formula, $"?figure={figure}", "image/svg+xml");
        var svg = XDocument.Parse(text).Root!;

        svg.Name.ShouldBe(SvgNamespace + "svg");
        svg.Element(SvgNamespace + "title")!.Value.ShouldNotBeNullOrWhiteSpace();
        svg.Element(SvgNamespace + "desc")!.Value.ShouldContain(figure == "flow" ? "mPa·s" : "%");
        svg.Descendants(SvgNamespace + "text").Count().ShouldBeGreaterThan(4);
        text.ShouldBe(await TextAsync(formula, $"?figure={figure}", "image/svg+xml"), "the same formula gives the same bytes");
    }

    [Fact]
    public async Task Post_AcceptPng_IsAPictureOfTwiceTheSize()
    {
        using var answer = await PostAsync(EvaluationExample.Formula, "?figure=melting", "image/png");
        var bytes = await answer.Content.ReadAsByteArrayAsync(Cancellation);

        // The signature of PNG, and width and height in the header chunk (ISO/IEC 15948, sections 5.2 and 11.2.2).
        bytes[..8].ShouldBe([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16)).ShouldBe(1440);
        System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(20)).ShouldBe(880);
    }

    [Theory]
    [InlineData("text/html;q=0.5, application/json;q=0.9", "application/json")]
    [InlineData("text/html, application/xhtml+xml, */*;q=0.8", "text/html")]
    [InlineData("application/json;q=0, */*", "text/html")]
    [InlineData("image/*", "image/svg+xml")]
    [InlineData("*/*", "application/json")]
    public async Task Post_Accept_ChoosesTheFormLikedBest(string accept, string type)
    {
        using var answer = await PostAsync(EvaluationExample.Formula, "", accept);

        answer.Content.Headers.ContentType!.MediaType.ShouldBe(type);
    }

    [Theory]
    [InlineData("text/plain", "", HttpStatusCode.NotAcceptable, "text/csv")]
    [InlineData("image/png", "?figure=meltin", HttpStatusCode.BadRequest, "melting")]
    [InlineData("text/html", "?document=poster", HttpStatusCode.BadRequest, "handout")]
    public async Task Post_WrongForm_SaysWhatThereIs(string accept, string query, HttpStatusCode status, string words)
    {
        using var answer = await PostAsync(EvaluationExample.Formula, query, accept);

        (await answer.ShouldBeProblemAsync(status)).ToJsonString().ShouldContain(words);
    }

    [Fact]
    public async Task Post_NothingToDraw_IsAProblem()
    {
        using var answer = await PostAsync("""{ "lines": [ { "ingredient": "kaolin", "percent": 100 } ] }""", "?figure=melting", "image/svg+xml");

        (await answer.ShouldBeProblemAsync(HttpStatusCode.UnprocessableEntity))["errors"]!.AsObject().Select(e => e.Key).ShouldBe(["?figure"]);
    }

    [Fact]
    public async Task Get_IngredientFigure_IsSvgWithAnEntityTag()
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/cocoa-butter/figures/melting.svg");

        answer.StatusCode.ShouldBe(HttpStatusCode.OK);
        answer.Content.Headers.ContentType!.MediaType.ShouldBe("image/svg+xml");
        XDocument.Parse(await answer.Content.ReadAsStringAsync(Cancellation)).Root!.Element(SvgNamespace + "title")!.Value.ShouldContain("Cocoa butter");
        using var again = await api.Client.SendAsync(HttpMethod.Get, "/v1/ingredients/cocoa-butter/figures/melting.svg", ("If-None-Match", answer.Headers.ETag!.Tag));
        again.StatusCode.ShouldBe(HttpStatusCode.NotModified);
    }

    [Theory]
    [InlineData("/v1/ingredients/cocoa-butter/figures/taste.svg", "fatty-acids")]
    [InlineData("/v1/ingredients/kaolin/figures/melting.svg", "nothing to draw")]
    [InlineData("/v1/ingredients/cocoa-buter/figures/melting.svg", "cocoa-butter")]
    public async Task Get_NoSuchFigure_SaysWhatThereIs(string url, string words)
    {
        using var answer = await api.Client.SendAsync(HttpMethod.Get, url);

        (await answer.ShouldBeProblemAsync(HttpStatusCode.NotFound))["detail"]!.GetValue<string>().ShouldContain(words);
    }

    /// <summary>docs/handout-example.md is the handout of the README's mask; MATERIA_WRITE_DOCS=1 writes it anew.</summary>
    [Fact]
    public async Task Handout_OfTheReadmesMask_IsTheOneShown()
    {
        const string Call = "'http://localhost:5000/v1/evaluations' -d '";
        var readme = await File.ReadAllTextAsync(Repository.File("README.md"), Cancellation);
        var start = readme.IndexOf(Call, StringComparison.Ordinal) + Call.Length;
        var body = readme[start..readme.IndexOf("'\n```", start, StringComparison.Ordinal)];

        var handout = await TextAsync(body, "?document=handout", "text/markdown");

        var file = Repository.File("docs/handout-example.md");
        if (Environment.GetEnvironmentVariable("MATERIA_WRITE_DOCS") == "1")
        {
            await File.WriteAllTextAsync(file, handout, Cancellation);
        }

        (await File.ReadAllTextAsync(file, Cancellation)).ShouldBe(handout);
    }

    private static List<Dictionary<string, string>> Rows(string text)
    {
        using var csv = CsvReader.Create(Encoding.UTF8.GetBytes(text), new CsvReaderOptions { Separator = ',', HasHeader = false });
        csv.Read().ShouldBeTrue();
        var (header, rows) = (csv.Current.ToArray(), new List<Dictionary<string, string>>());
        while (csv.Read())
        {
            rows.Add(header.Zip(csv.Current.ToArray()).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal));
        }

        return rows;
    }

    private Task<HttpResponseMessage> PostAsync(string body, string query, string accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/v1/evaluations" + query) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        request.Headers.TryAddWithoutValidation("Accept", accept);
        return api.Client.SendAsync(request, Cancellation);
    }

    private async Task<string> TextAsync(string body, string query, string accept)
    {
        using var answer = await PostAsync(body, query, accept);
        var text = await answer.Content.ReadAsStringAsync(Cancellation);
        answer.StatusCode.ShouldBe(HttpStatusCode.OK, text);
        return text;
    }

    // The pages are written as well-formed XML, so that a test can read them.
    private static XElement Page(string html)
    {
        html.ShouldStartWith("<!DOCTYPE html>\n");
        return XElement.Parse(html[html.IndexOf('\n')..]);
    }
}
