namespace Materia.Data;

/// <summary>What is known of a release without reading its content.</summary>
/// <param name="Number">The number; releases count up from 1.</param>
/// <param name="Published">When it was published, in UTC to the microsecond.</param>
/// <param name="Checksum">The content's checksum, see <see cref="Catalogue.CatalogueJson.Checksum"/>.</param>
/// <param name="Origin">Where its content came from.</param>
/// <param name="IngredientCount">How many ingredients it holds.</param>
/// <param name="StatementCount">How many statements it holds, those of the reference tables included.</param>
/// <param name="SourceCount">How many sources it holds.</param>
public sealed record ReleaseHeader(
    int Number, DateTimeOffset Published, string Checksum, ReleaseOrigin Origin, int IngredientCount, int StatementCount, int SourceCount);
