namespace Materia.Seed.Inventory;

/// <summary>Something wrong in an inventory file, and what was done about it.</summary>
/// <param name="Line">The line, counted from 1; <see langword="null"/> for the file as a whole.</param>
/// <param name="Message">What is wrong and what was done.</param>
public sealed record InventoryFault(int? Line, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => Line is { } line ? FormattableString.Invariant($"line {line}: {Message}") : Message;
}
