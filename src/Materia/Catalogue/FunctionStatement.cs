namespace Materia.Catalogue;

/// <summary>A function that the ingredient is listed under.</summary>
public sealed record FunctionStatement : Statement
{
    /// <summary>The official inventory's term in kebab case, such as <c>skin-conditioning-emollient</c>.</summary>
    public required string Function { get; init; }
}
