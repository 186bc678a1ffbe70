using Materia.Seed.Cli;
using static Materia.Tests.Seed.SeedTexts;

namespace Materia.Tests.Seed;

public sealed class SeedCommandTests : IDisposable
{
    private readonly SeedFolder folder = new();
    private readonly StringWriter output = new();
    private readonly StringWriter error = new();

    private string Database => Path.Combine(folder.Root, "materia.db");

    public void Dispose()
    {
        folder.Dispose();
        output.Dispose();
        error.Dispose();
    }

    [Theory]
    [InlineData("no command")]
    [InlineData("unknown command serve", "serve")]
    [InlineData("unknown option --quick", "check", "--quick")]
    [InlineData("a second directory b", "check", "a", "b")]
    [InlineData("--sqlite belongs to load and inventory", "check", "--sqlite", "x.db")]
    [InlineData("--sqlite needs a value", "load", "--sqlite")]
    [InlineData("two databases are named", "load", "--sqlite", "x.db", "--postgres", "Host=x")]
    [InlineData("name the file", "inventory")]
    [InlineData("a second file b", "inventory", "a", "b")]
    [InlineData("cannot be read", "inventory", "nowhere.csv", "--sqlite", "x.db")]
    [InlineData("there is no directory nowhere", "check", "nowhere")]
    public async Task Run_CommandNotUnderstood_SaysWhyAndAnswersTwo(string gist, params string[] args)
    {
        (await Run(args)).ShouldBe(ExitCode.Usage);

        error.ToString().ShouldContain(gist);
        output.ToString().ShouldBeEmpty();
    }

    [Fact]
    public async Task Run_Help_PrintsItAndAnswersZero()
    {
        (await Run("--help")).ShouldBe(ExitCode.Done);

        output.ToString().ShouldContain("Usage: Materia.Seed <command> [directory] [options]");
    }

    [Fact]
    public async Task Run_SchemaThenCheck_FindsNoFault()
    {
        (await Run("schema", folder.Root)).ShouldBe(ExitCode.Done);
        (await Run("check", folder.Root)).ShouldBe(ExitCode.Done);

        output.ToString().ShouldBe($"schemas written{Environment.NewLine}no faults{Environment.NewLine}");
    }

    [Fact]
    public async Task Run_CheckWithFaults_PrintsEachWithFileAndLine()
    {
        folder.Edit(Butter, "8001-79-4", "8001-79-5");
        folder.Edit(Uses, "leave-on,lips", "leave-on,lip");
        await Run("schema", folder.Root);

        (await Run("check", folder.Root)).ShouldBe(ExitCode.Faults);

        var lines = error.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        lines.Length.ShouldBe(2);
        lines[0].ShouldStartWith($"{Butter}:{folder.Line(Butter, "8001-79-5")}: CAS number");
        lines[1].ShouldStartWith($"{Uses}:3: site \"lip\" is unknown");
    }

    [Fact]
    public async Task Run_Format_NamesWhatItRewrote()
    {
        folder.Edit(Oil, "{\n  \"id\"", "{ \"id\"");

        (await Run("format", folder.Root)).ShouldBe(ExitCode.Done);

        output.ToString().ShouldContain($"formatted {Oil}");
        folder.Text(Oil).ShouldBe(All[Oil]);
    }

    [Fact]
    public async Task Run_LoadWithFaults_OpensNoDatabase()
    {
        folder.Edit(Oil, "78-70-6", "78-70-7");

        (await Run("load", folder.Root, "--sqlite", Database)).ShouldBe(ExitCode.Faults);

        error.ToString().ShouldStartWith($"{Oil}:{folder.Line(Oil, "78-70-7")}: CAS number");
        File.Exists(Database).ShouldBeFalse();
    }

    [Fact]
    public async Task Run_LoadTwice_PublishesOnce()
    {
        (await Run("load", folder.Root, "--sqlite", Database)).ShouldBe(ExitCode.Done, error.ToString());
        (await Run("load", folder.Root, "--sqlite", Database)).ShouldBe(ExitCode.Done, error.ToString());

        output.ToString().ShouldBe(
            $"release 1: 3 ingredients, 3 sources{Environment.NewLine}release 1 holds this data already; nothing changed{Environment.NewLine}");
    }

    [Theory]
    [InlineData("--postgres", "Host=only", "must name a server and a database")]
    [InlineData("--sqlite", "no-such-folder/materia.db", "does not exist")]
    public async Task Run_LoadIntoUnusableDatabase_AnswersTwo(string option, string value, string gist)
    {
        (await Run("load", folder.Root, option, value)).ShouldBe(ExitCode.Usage);

        error.ToString().ShouldContain(gist);
    }

    [Fact]
    public async Task Run_LoadIntoAFileThatIsNoDatabase_SaysThatNothingWasLoaded()
    {
        folder.Write("materia.db", new string('x', 5000));

        (await Run("load", folder.Root, "--sqlite", Database)).ShouldBe(ExitCode.Faults);

        error.ToString().ShouldContain("the database refused, nothing was loaded");
    }

    private Task<int> Run(params string[] args) => SeedCommand.RunAsync(args, output, error, TestContext.Current.CancellationToken);
}
