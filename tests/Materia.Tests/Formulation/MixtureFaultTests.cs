using Materia.Catalogue;
using Materia.Formulation.OwnMaterials;
using static Materia.Tests.Formulation.Formulas;

namespace Materia.Tests.Formulation;

public sealed class MixtureFaultTests
{
    private static readonly OwnMaterial Wax = new() { Name = "Wax", Kind = IngredientKind.Wax };

    [Fact]
    public void Create_PartsThatAreNotTheWhole_SaysTheSum() =>
        FaultOf([new() { Ingredient = "beeswax", Percent = 60 }, new() { Ingredient = "cetyl-alcohol", Percent = 30 }], "").ShouldContain("add up to 90 %");

    [Fact]
    public void Create_UnknownPart_PointsAtIt() =>
        FaultOf([new() { Ingredient = "nonsense", Percent = 100 }], "/0/ingredient").ShouldContain("not an ingredient");

    [Fact]
    public void Create_PartWithoutShare_PointsAtIt() =>
        FaultOf([new() { Ingredient = "beeswax" }], "/0/percent").ShouldContain("share of the mixture");

    [Fact]
    public void Create_TooManyParts_IsAFault() =>
        FaultOf([.. Enumerable.Repeat(new OwnPart { Ingredient = "beeswax", Percent = 0.1m }, 201)], "").ShouldContain("at most 200 parts");

    [Fact]
    public void Create_PartsOfAPart_AreRefused() =>
        FaultOf([new() { Own = Wax with { Name = "Inner", Parts = [new() { Ingredient = "beeswax", Percent = 100 }] }, Percent = 100 }], "/0/own/parts").ShouldContain("one level");

    [Fact]
    public void Create_PartsAndFigures_AreRefused() =>
        Fault(Of(Own(Wax with { Water = 1, Parts = [new() { Ingredient = "beeswax", Percent = 100 }] })), "/lines/0/own/parts").Message.ShouldContain("takes its figures from its parts");

    private static string FaultOf(IReadOnlyList<OwnPart> parts, string member) =>
        Fault(Of(Own(Wax with { Parts = parts })), $"/lines/0/own/parts{member}").Message;
}
