using System.Xml.Linq;
using Materia.Api.Figures;

namespace Materia.Api.Tests.Figures;

public sealed class FormulaFigureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => [.. FormulaFigures.All.Select(f => f.Name).Where(n => n != "cost")];

    [Theory]
    [MemberData(nameof(Names))]
    public void Svg_DrawnTwice_GivesTheSameBytes(string name)
    {
        var figure = FormulaFigures.Find(name).ShouldNotBeNull();

        FormulaFigures.Svg(figure, DrawnFormulas.Mask()).ShouldNotBeNull().ShouldBe(FormulaFigures.Svg(figure, DrawnFormulas.Mask()));
    }

    [Fact]
    public void Svg_ManyAtOnce_GivesTheSameBytes()
    {
        var (figure, evaluation) = (FormulaFigures.Find("melting")!, DrawnFormulas.Mask());
        var drawn = new string?[40];

        Parallel.For(0, drawn.Length, i => drawn[i] = FormulaFigures.Svg(figure, evaluation));

        drawn.Distinct().ShouldHaveSingleItem().ShouldNotBeNull();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Svg_Drawn_HasANameADescriptionAndWordsInAFontThatEveryViewerHas(string name)
    {
        var root = Drawn(name, DrawnFormulas.Mask("Ointment <1> & \"so on\""));

        var labels = root.Attribute("aria-labelledby").ShouldNotBeNull().Value.Split(' ');
        labels.Select(l => root.Elements().Single(e => e.Attribute("id")?.Value == l).Value).ShouldAllBe(t => t.Length > 10);
        root.Element(Svg + "title")!.Value.ShouldContain("Ointment <1> & \"so on\"");
        root.Attribute("viewBox").ShouldNotBeNull().Value.ShouldBe("0 0 720 440");
        var words = root.Descendants(Svg + "text").ToList();
        words.Count.ShouldBeGreaterThan(4);
        words.ShouldAllBe(t => t.Attribute("font-family")!.Value.EndsWith(", sans-serif", StringComparison.Ordinal));
        words.ShouldAllBe(t => !t.Attribute("x")!.Value.Contains(',') && !t.Attribute("y")!.Value.Contains(','));
    }

    [Fact]
    public void Svg_SeveralOnOnePage_ShareNoId()
    {
        var evaluation = DrawnFormulas.Mask();

        var ids = FormulaFigures.All
            .Select(f => FormulaFigures.Svg(f, evaluation))
            .OfType<string>()
            .SelectMany(s => XDocument.Parse(s).Descendants().Select(e => e.Attribute("id")?.Value).OfType<string>())
            .ToList();

        ids.Count.ShouldBeGreaterThan(10);
        ids.ShouldBeUnique();
    }

    [Fact]
    public void Svg_Clipped_RefersToItsOwnIds()
    {
        var root = Drawn("melting", DrawnFormulas.Mask());
        var ids = root.Descendants(Svg + "clipPath").Select(c => $"url(#{c.Attribute("id")!.Value})").ToList();

        var uses = root.Descendants().Select(e => e.Attribute("clip-path")?.Value).OfType<string>().ToList();

        uses.ShouldNotBeEmpty();
        uses.ShouldAllBe(u => ids.Contains(u));
    }

    [Theory]
    [InlineData("椿油 十二番")]
    [InlineData("Olive 🫒 & <script>alert(1)</script>")]
    [InlineData("Масло какао")]
    public void Svg_NameInAnotherScript_KeepsItsWords(string own)
    {
        var words = Drawn("oxidation", DrawnFormulas.Mask(own: own)).Descendants(Svg + "text").Select(t => t.Value).ToList();

        words.ShouldContain(w => own.StartsWith(w.TrimEnd('…'), StringComparison.Ordinal) && w.Length > 5, string.Join(" | ", words));
        words.ShouldAllBe(w => !w.Contains('\u25a1'));
    }

    [Fact]
    public void Svg_LongTitleOfPictures_IsCutBetweenCharacters()
    {
        // Each picture is a pair of surrogates; one of the two titles is cut where the other has the middle of a pair.
        foreach (var title in new[] { string.Concat(Enumerable.Repeat("🫒", 40)), "a" + string.Concat(Enumerable.Repeat("🫒", 40)) })
        {
            var shown = Drawn("melting", DrawnFormulas.Mask(title)).Element(Svg + "title")!.Value;

            shown.ShouldEndWith("🫒…");
        }
    }

    [Fact]
    public void Svg_Melting_SaysHowItFeels()
    {
        var evaluation = DrawnFormulas.Mask();

        var words = Drawn("melting", evaluation).Descendants(Svg + "text").Select(t => t.Value).ToList();

        foreach (var texture in evaluation.Of(Materia.Formulation.Sections.ChemistrySections.Melting)!.Texture)
        {
            words.ShouldContain(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{texture.Temperature:0} °C: {texture.Words}"));
        }
    }

    [Fact]
    public void Png_Drawn_IsAPictureTwiceAsFine()
    {
        var png = FormulaFigures.Png(FormulaFigures.Find("melting")!, DrawnFormulas.Mask()).ShouldNotBeNull();

        // The PNG specification (ISO/IEC 15948), 5.2 and 11.2.2: the signature, then IHDR with width and height as big-endian integers.
        png[..8].ShouldBe(new byte[] { 137, 80, 78, 71, 13, 10, 26, 10 });
        System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)).ShouldBe(1440);
        System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)).ShouldBe(880);
    }

    private static XElement Drawn(string name, Materia.Formulation.Evaluation evaluation) =>
        XDocument.Parse(FormulaFigures.Svg(FormulaFigures.Find(name)!, evaluation).ShouldNotBeNull()).Root!;
}
