using System.Globalization;

namespace Materia.Api.Serving;

/// <summary>There is nothing to serve: the database is empty and the seed data has faults.</summary>
/// <param name="faults">How many.</param>
public sealed class SeedRefusedException(int faults)
    : Exception(string.Create(CultureInfo.InvariantCulture, $"The database is empty and the seed data has {faults} {(faults == 1 ? "fault" : "faults")}, so nothing of it was loaded; the log lists them."));
