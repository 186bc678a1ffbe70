using Materia.Catalogue;
using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Formatting;

/// <summary>Lays the files of a seed directory out in their canonical form, or tells which are not.</summary>
public static class SeedFormatter
{
    /// <summary>Files whose text is not the canonical one, as faults at their first line that differs. Files that cannot be read are left to the reader.</summary>
    public static IReadOnlyList<SeedFault> Check(string directory) =>
    [
        .. Forms(directory, new FaultList())
            .Where(f => !f.IsCanonical)
            .Select(f => new SeedFault(f.Path, f.FirstDifference(), "not in canonical form; run format")),
    ];

    /// <summary>
    /// Rewrites the files that are not in canonical form. Files that cannot be read stay as they are and give the faults.
    /// </summary>
    /// <param name="directory">The seed directory.</param>
    /// <param name="changed">Receives the path of each rewritten file.</param>
    public static IReadOnlyList<SeedFault> Rewrite(string directory, Action<string> changed)
    {
        var faults = new FaultList();
        foreach (var form in Forms(directory, faults).Where(f => !f.IsCanonical))
        {
            File.WriteAllBytes(Path.Combine(directory, form.Path), form.Canonical);
            changed(form.Path);
        }

        return faults.Sorted();
    }

    private static IEnumerable<FileForm> Forms(string directory, FaultList faults) =>
        Records<Ingredient>(directory, SeedDirectory.Ingredients, faults)
            .Concat(Records<Source>(directory, SeedDirectory.Sources, faults))
            .Concat(Table(directory, FattyAcidTable.Path, FattyAcidTable.Columns, FattyAcidTable.Row, faults))
            .Concat(Table(directory, UseTable.Path, UseTable.Columns, UseTable.Row, faults))
            .Concat(Table(directory, SubstitutionGroupTable.Path, SubstitutionGroupTable.Columns, SubstitutionGroupTable.Row, faults))
            .Concat(Table(directory, LimitTable.Path, LimitTable.Columns, LimitTable.Row, faults))
            .Concat(Members(directory, LimitTable.MembersPath, LimitTable.Owner, faults))
            .Concat(Table(directory, AllergenTable.Path, AllergenTable.Columns, AllergenTable.Row, faults))
            .Concat(Members(directory, AllergenTable.MembersPath, AllergenTable.Owner, faults))
            .Concat(Table(directory, NeedTable.Path, NeedTable.Columns, NeedTable.Row, faults))
            .Concat(Table(directory, NeedTable.EffectsPath, NeedTable.EffectColumns, NeedTable.EffectRow, faults));

    private static IEnumerable<FileForm> Members(string directory, string path, string owner, FaultList faults) =>
        Table(directory, path, OwnedMember.Columns(owner), row => OwnedMember.Row(row, owner), faults);

    private static IEnumerable<FileForm> Records<T>(string directory, string folder, FaultList faults)
        where T : class
    {
        foreach (var file in SeedDirectory.Files(directory, folder, faults))
        {
            if (file.Read<T>(faults) is { } record)
            {
                yield return new FileForm(file.Path, file.Memory, CanonicalText.Write(record));
            }
        }
    }

    private static IEnumerable<FileForm> Table<T>(
        string directory, string path, IReadOnlyList<string> columns, Func<TableRow, T> row, FaultList faults)
    {
        if (TableFile.Read(directory, path, columns, row, faults).IsComplete)
        {
            var text = File.ReadAllBytes(Path.Combine(directory, path));
            yield return new FileForm(path, text, CanonicalTable.Write(text));
        }
    }
}
