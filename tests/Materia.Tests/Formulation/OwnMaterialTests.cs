using System.Text.Json;
using Materia.Catalogue;
using Materia.Formulation;
using Materia.Formulation.OwnMaterials;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class OwnMaterialTests
{
    private static readonly OwnMaterial Oil = new() { Name = "Oil, lot 12", Kind = IngredientKind.Oil };

    [Fact]
    public void Create_OwnMaterial_BecomesAnIngredientWhoseStatementsHaveSourceOwn()
    {
        var own = Oil with
        {
            InciName = "Olea Europaea Fruit Oil",
            FattyAcids = [new() { Acid = "18:1n-9", Percent = 75, Low = 70, High = 80 }, new() { Acid = "18:2n-6", Percent = 24 }],
            Constituents = [new() { Substance = "115-95-7", Percent = 0.1m }],
            Water = 0.2m,
            Figures = new() { [Property.Density] = new() { Value = 0.913m, Unit = "g/mL", At = new() { Temperature = 20 } } },
        };

        var ingredient = Normalised(Of(Own(own))).Lines[0].Ingredient;

        ingredient.Id.ShouldBe("Oil, lot 12");
        ingredient.CommonName().ShouldBe("Oil, lot 12");
        ingredient.InciName().ShouldBe("Olea Europaea Fruit Oil");
        ingredient.Properties.ShouldHaveSingleItem().Typical.ShouldBe(0.913m);
        ingredient.FattyAcidProfiles.ShouldHaveSingleItem().Shares.Select(s => (s.Acid, s.Low, s.Typical, s.High)).ShouldBe([("18:1n-9", 70m, 75m, 80m), ("18:2n-6", null, 24m, null)]);
        ingredient.Constituents.Select(c => (c.Substance, c.Cas, c.Typical)).ShouldBe([("115-95-7", "115-95-7", 0.1m), ("water", "7732-18-5", 0.2m)]);
        IEnumerable<Statement> statements = [.. ingredient.Names, .. ingredient.Properties, .. ingredient.FattyAcidProfiles[0].Shares, .. ingredient.Constituents];
        statements.ShouldAllBe(s => s.Source == "own");
    }

    [Fact]
    public void Create_Mixture_IsTakenApartInTheBlend()
    {
        var own = new OwnMaterial
        {
            Name = "Emulsifying wax",
            Kind = IngredientKind.Wax,
            Parts = [new() { Ingredient = "cetyl-alcohol", Percent = 80 }, new() { Own = new() { Name = "Surfactant", Kind = IngredientKind.Ester }, Percent = 20 }],
        };

        var formula = Normalised(Of(Own(own, 10), Percent("cetyl-alcohol", 2), Balance("olive-oil")));

        formula.Lines[0].Material.ShouldBe("Emulsifying wax");
        formula.Blend(TestCatalogue.Release).Components.Select(c => (c.Name, c.MassFraction)).ShouldBe([("cetyl-alcohol", 0.1), ("Surfactant", 0.02), ("olive-oil", 0.88)]);
    }

    [Fact]
    public void FormulationJson_OwnMaterial_TakesEveryPropertyOfTheCatalogue()
    {
        var members = PropertyDefinition.All.Values.ToDictionary(
            d => JsonNamingPolicy.CamelCase.ConvertName(d.Property.ToString()), d => new { low = d.PlausibleLow, high = d.PlausibleHigh, unit = d.Unit });

        var own = JsonSerializer.Deserialize<OwnMaterial>(JsonSerializer.Serialize(members), FormulationJson.Options).ShouldNotBeNull();

        own.Figures.Keys.ShouldBe(Enum.GetValues<Property>(), ignoreOrder: true);
        Normalised(Of(Own(own with { Name = "All of it", Kind = IngredientKind.Ester }))).Lines[0].Ingredient.Properties.Count.ShouldBe(PropertyDefinition.All.Count);
    }

    [Fact]
    public void Create_NothingSaidOfIt_AsksForNameAndKind() =>
        Faults(Of(Own(new()))).Select(f => f.Pointer).ShouldBe(["/lines/0/own/name", "/lines/0/own/kind"]);

    [Fact]
    public void Create_NameOfACatalogueIngredient_IsAFault() =>
        Fault(Of(Own(Oil with { Name = "olive-oil" })), "/lines/0/own/name").Message.ShouldContain("id of a catalogue ingredient");

    [Fact]
    public void Create_TwoOwnOfOneName_IsAFaultAtTheSecond() =>
        Fault(Of(Own(Oil, 50), Own(Oil with { Name = "OIL, lot 12" }, 50)), "/lines/1/own/name").Message.ShouldContain("/lines/0/own");

    [Theory]
    [InlineData(96.9)]
    [InlineData(100.6)]
    public void Create_ProfileThatIsNotWhole_SaysTheSum(double percent)
    {
        var own = Oil with { FattyAcids = [new() { Acid = "18:1n-9", Percent = 10 }, new() { Acid = "18:2n-6", Percent = (decimal)percent - 10 }] };

        Fault(Of(Own(own)), "/lines/0/own/fattyAcids").Message.ShouldContain($"add up to {((decimal)percent).ToString(System.Globalization.CultureInfo.InvariantCulture)} %");
    }

    [Theory]
    [InlineData(97)]
    [InlineData(100.5)]
    public void Create_ProfileAtTheEdgeOfWhole_IsTaken(double percent)
    {
        var own = Oil with { FattyAcids = [new() { Acid = "18:1n-9", Percent = 10 }, new() { Acid = "18:2n-6", Percent = (decimal)percent - 10 }] };

        Normalised(Of(Own(own))).Lines[0].Ingredient.FattyAcidProfiles.Count.ShouldBe(1);
    }

    [Theory]
    [InlineData("18:9", "100", "/acid", "not a fatty acid of the table")]
    [InlineData("16:0-ol", "100", "/acid", "not a fatty acid of the table")]
    [InlineData(null, "100", "/acid", "Name the fatty acid")]
    [InlineData("18:1n-9", null, "/percent", "Give the share")]
    [InlineData("18:1n-9", "-1", "/percent", "from 0 to 100")]
    public void Create_BadFattyAcid_PointsAtTheMember(string? acid, string? percent, string member, string expected)
    {
        var share = percent is null ? (decimal?)null : decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture);

        Fault(Of(Own(Oil with { FattyAcids = [new() { Acid = acid, Percent = share }] })), $"/lines/0/own/fattyAcids/0{member}").Message.ShouldContain(expected);
    }

    [Fact]
    public void Create_FattyAcidTwice_IsAFault() =>
        Fault(Of(Own(Oil with { FattyAcids = [new() { Acid = "18:1n-9", Percent = 50 }, new() { Acid = "18:1n-9", Percent = 50 }] })), "/lines/0/own/fattyAcids/1/acid").Message.ShouldContain("given twice");

    [Theory]
    [InlineData("115-95-8", "check digit")]
    [InlineData("12345", "not a CAS number")]
    [InlineData(" ", "Name the substance")]
    public void Create_BadSubstance_PointsAtIt(string substance, string expected) =>
        Fault(Of(Own(Oil with { Constituents = [new() { Substance = substance, Percent = 1 }] })), "/lines/0/own/constituents/0/substance").Message.ShouldContain(expected);

    [Fact]
    public void Create_ConstituentsOverTheWhole_IsAFault() =>
        Fault(Of(Own(Oil with { Water = 60, Constituents = [new() { Substance = "linalool", Percent = 41 }] })), "/lines/0/own/constituents").Message.ShouldContain("101 %");

    [Fact]
    public void Create_ConstituentWithoutShare_IsAFault() =>
        Fault(Of(Own(Oil with { Constituents = [new() { Substance = "linalool" }] })), "/lines/0/own/constituents/0/percent").Message.ShouldContain("low and high");

    [Fact]
    public void Create_WaterTwice_IsAFault() =>
        Fault(Of(Own(Oil with { Water = 5, Constituents = [new() { Substance = "Water", Percent = 5 }] })), "/lines/0/own/water").Message.ShouldContain("give it once");
}
