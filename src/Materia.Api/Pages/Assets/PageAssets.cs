using System.Collections.Frozen;
using System.Reflection;
using System.Security.Cryptography;

namespace Materia.Api.Pages.Assets;

/// <summary>
/// The styles, scripts and pictures of the pages, read from the program itself. All stand below one folder whose name is the hash of
/// them all, so that browsers may keep them for ever, and scripts find each other by plain relative paths.
/// </summary>
public static class PageAssets
{
    private const string Prefix = "assets/";
    private const int HashLetters = 12;

    private static readonly FrozenDictionary<string, PageAsset> Files = Read();

    /// <summary>The folder's name.</summary>
    public static string Folder { get; } = Hash();

    /// <summary>The address of a file, such as <c>pages.css</c>.</summary>
    /// <exception cref="ArgumentException">There is no such file.</exception>
    public static string Url(string name) =>
        Files.ContainsKey(name) ? $"/assets/{Folder}/{name}" : throw new ArgumentException($"There is no file {name} in wwwroot.", nameof(name));

    /// <summary>The file of this name, or <see langword="null"/>.</summary>
    public static PageAsset? Find(string name) => Files.GetValueOrDefault(name);

    private static FrozenDictionary<string, PageAsset> Read()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => PageAsset.Read(n[Prefix.Length..], assembly.GetManifestResourceStream(n)!))
            .ToFrozenDictionary(a => a.Name, StringComparer.Ordinal);
    }

    private static string Hash()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in Files.Values.OrderBy(f => f.Name, StringComparer.Ordinal))
        {
            hash.AppendData(file.Bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..HashLetters];
    }
}
