using Materia.Catalogue;
using Materia.Seed;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

public sealed class SeedReaderTests : IDisposable
{
    private readonly SeedFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Read_FaultlessDirectory_GivesEveryRecord()
    {
        var result = SeedReader.Read(folder.Root);

        result.Faults.ShouldBeEmpty();
        var content = result.Content.ShouldNotBeNull();
        content.Ingredients.Select(i => i.Id).ShouldBe(["example-blend", "example-butter", "example-oil"]);
        content.Sources.Select(s => s.Id).ShouldBe(["example-book", "recalled", "trade-practice"]);
        content.FattyAcids.Count.ShouldBe(7);
        content.Uses.Select(u => u.Id).ShouldBe(["hair-oil-leave-on", "lip-balm"]);
        content.SubstitutionGroups.Select(g => g.Description).ShouldBe(["Holds oil in water, more or less."]);
    }

    [Fact]
    public void Read_FaultlessDirectory_KeepsFiguresAsWritten()
    {
        var content = SeedReader.Read(folder.Root).Content.ShouldNotBeNull();

        var density = content.Ingredients[1].Properties[1];
        density.Property.ShouldBe(Property.Density);
        density.Typical.ShouldBe(0.910m);
        density.At!.Temperature.ShouldBe(20);
        density.Locator.ShouldBe("p. 5");
        var oleic = content.FattyAcids[2];
        (oleic.Symbol, oleic.Carbons, oleic.DoubleBonds, oleic.MolarMass).ShouldBe(("18:1n-9", 18, 1, 282.47m));
        oleic.Note.ShouldBe("two crystal forms, \"alpha\" and \"gamma\", differ");
        content.FattyAcids[6].Alcohol.ShouldBeTrue();
    }

    [Fact]
    public void Read_FaultsInSeveralFiles_ReportsAllByFileAndLine()
    {
        folder.Edit(Butter, "8001-79-4", "8001-79-5");
        folder.Edit(Butter, "\"typical\": 33.5", "\"typical\": 39");
        folder.Edit(Oil, "\"high\": 45", "\"hihg\": 45");
        folder.Edit(Acids, "256.43", "265.43");
        folder.Edit(Uses, "leave-on,lips", "leave-on,lip");

        var result = SeedReader.Read(folder.Root);

        result.Content.ShouldBeNull();
        result.Faults.Select(f => (f.File, f.Line)).ShouldBe(
        [
            (Butter, folder.Line(Butter, "8001-79-5")),
            (Butter, folder.Line(Butter, "melting-range")),
            (Oil, folder.Line(Oil, "hihg")),
            (Acids, 2),
            (Uses, 3),
        ]);
    }

    [Fact]
    public void Read_NoSuchDirectory_NamesTheMissingFolders()
    {
        var faults = SeedReader.Read(Path.Combine(folder.Root, "nowhere")).Faults;

        faults.Select(f => f.File).ShouldBe(["ingredients", "sources", "tables", "tables/fatty-acids.csv", "tables/uses.csv", "tables/substitution-groups.csv", "tables/limits.csv", "tables/limit-members.csv", "tables/allergens.csv", "tables/allergen-members.csv", "tables/needs.csv", "tables/need-effects.csv"], ignoreOrder: true);
    }

    [Theory]
    [InlineData("ingredients/butter/notes.txt", "only .json files belong here")]
    [InlineData("tables/fatty_acids.csv", "no table of that name is read")]
    public void Read_StrayFile_IsNotPassedOverInSilence(string file, string gist)
    {
        folder.Write(file, "x");

        var fault = SeedReader.Read(folder.Root).Faults.ShouldHaveSingleItem();
        fault.File.ShouldBe(file);
        fault.Message.ShouldContain(gist);
    }
}
