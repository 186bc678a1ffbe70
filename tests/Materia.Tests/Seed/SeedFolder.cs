using Materia.Seed;

namespace Materia.Tests.Seed;

/// <summary>A seed directory in a temporary folder, without a fault until a test edits it.</summary>
public sealed class SeedFolder : IDisposable
{
    public SeedFolder()
    {
        foreach (var (file, text) in SeedTexts.All)
        {
            Write(file, text);
        }
    }

    public string Root { get; } = Directory.CreateTempSubdirectory("materia-seed-").FullName;

    public void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Full(file))!);
        File.WriteAllText(Full(file), text);
    }

    public void Delete(string file) => File.Delete(Full(file));

    public string Text(string file) => File.ReadAllText(Full(file));

    /// <summary>Replaces the one place of <paramref name="old"/> in a file.</summary>
    public void Edit(string file, string old, string replacement)
    {
        var text = Text(file);
        text.Split(old).Length.ShouldBe(2, $"\"{old}\" should stand exactly once in {file}");
        Write(file, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    /// <summary>The line, counted from 1, of the first place of <paramref name="mark"/> in a file.</summary>
    public int Line(string file, string mark)
    {
        var text = Text(file);
        var at = text.IndexOf(mark, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, $"\"{mark}\" should stand in {file}");
        return 1 + text[..at].Count(c => c == '\n');
    }

    /// <summary>Asserts that reading gives exactly one fault, at the line of <paramref name="mark"/>, whose message holds <paramref name="gist"/>.</summary>
    public void ShouldReport(string file, string mark, string gist)
    {
        var result = SeedReader.Read(Root);
        result.Content.ShouldBeNull();
        var fault = result.Faults.ShouldHaveSingleItem();
        fault.File.ShouldBe(file);
        fault.Line.ShouldBe(Line(file, mark), fault.Message);
        fault.Message.ShouldContain(gist, Case.Sensitive);
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private string Full(string file) => Path.Combine(Root, file);
}
