namespace Materia.Api.Tests.Hosting;

/// <summary>The repository that the tests were built from.</summary>
internal static class Repository
{
    /// <summary>The path of a file below the root.</summary>
    public static string File(string relative)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Materia.sln")))
            {
                return Path.Combine(folder.FullName, relative);
            }
        }

        throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds Materia.sln; run the tests inside the repository.");
    }
}
