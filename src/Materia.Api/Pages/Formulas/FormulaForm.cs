using Materia.Api.Pages.Failures;
using Materia.Api.Serving;
using Materia.Formulation;
using Microsoft.AspNetCore.WebUtilities;

namespace Materia.Api.Pages.Formulas;

/// <summary>
/// Takes the formula page's form and answers with the address of the formula that it says. Nothing is stored, so a form sent from
/// elsewhere can do no harm and needs no token.
/// </summary>
public static class FormulaForm
{
    private const int LongestSearch = 200;

    /// <summary>Adds <c>POST /formula/edit</c>.</summary>
    public static void MapFormulaForm(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/formula/edit", EditAsync).DisableAntiforgery().ExcludeFromDescription();

    private static async Task EditAsync(HttpContext context)
    {
        if (!context.Request.HasFormContentType || context.Features.Get<ServedRelease>() is not { } served)
        {
            await FailurePages.WriteAsync(context, StatusCodes.Status400BadRequest);
            return;
        }

        var fields = new FormFields(await context.Request.ReadFormAsync(context.RequestAborted));
        var (formula, _) = FormulaLink.Decode(fields.Text("f") ?? "");
        var edited = FormulaEdit.Apply(formula ?? new Formula(), fields, served);
        var address = FormulaLink.Url(edited.Formula);
        if (edited.Search is { } search)
        {
            address = QueryHelpers.AddQueryString(address, "find", search.Length <= LongestSearch ? search : search[..LongestSearch]);
        }

        if (fields.Unread.Count > 0)
        {
            address = QueryHelpers.AddQueryString(address, "unread", string.Join(',', fields.Unread.Take(20)));
        }

        // 303: whatever was sent, what follows is a GET (RFC 9110 section 15.4.4).
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = address + (edited.Added ? "#line-" + (edited.Formula.Lines.Count - 1) : "");
    }
}
