using Microsoft.EntityFrameworkCore;

namespace Materia.Data.Engines;

/// <summary>What the engines write differently in a constraint. Every expression is null when its column is null, so that a check passes.</summary>
internal abstract class SqlDialect
{
    /// <summary>The column's value as a number that can be compared.</summary>
    public abstract string Number(string column);

    /// <summary>True when the column is a CAS number whose check digit holds, by <see cref="Catalogue.CasNumber.IsValid"/>.</summary>
    public abstract string IsCas(string column);

    /// <summary>True when the column is an EC number whose check digit holds, by <see cref="Catalogue.EcNumber.IsValid"/>.</summary>
    public abstract string IsEc(string column);

    /// <summary>True when the column is a word in kebab case.</summary>
    public abstract string IsKebabCase(string column);

    /// <summary>True when the column is a checksum: 64 hexadecimal digits in lower case.</summary>
    public abstract string IsChecksum(string column);

    /// <summary>True when the column holds a decimal number; absent where the column's type holds nothing else.</summary>
    public virtual string? IsDecimal(string column) => null;

    /// <summary>Maps types that the engine does not keep as they are.</summary>
    public virtual void MapTypes(ModelConfigurationBuilder types)
    {
    }
}
