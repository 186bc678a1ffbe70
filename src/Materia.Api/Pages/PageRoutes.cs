using Materia.Api.Http;
using Materia.Api.Pages.Assets;
using Materia.Api.Pages.Formulas;
using Materia.Api.Pages.Shell;
using Materia.Api.Serving;
using Microsoft.AspNetCore.Components.Endpoints;

namespace Materia.Api.Pages;

/// <summary>The pages for people: components rendered on the server, which read the catalogue and the evaluator in process.</summary>
public static class PageRoutes
{
    private const string ForEver = "public, max-age=31536000, immutable";

    /// <summary>Sets the pages up.</summary>
    public static IServiceCollection AddPages(this IServiceCollection services)
    {
        services.AddRazorComponents();
        services.AddLocalization();
        services.AddHttpContextAccessor();
        services.AddScoped(OfRequest);
        services.AddScoped<Figures.CiteNumbers>();
        return services;
    }

    /// <summary>Handles what pages need besides the call itself. Stands after routing.</summary>
    public static WebApplication UsePages(this WebApplication app)
    {
        app.UseMiddleware<PageRequests>();
        app.UseAntiforgery();
        return app;
    }

    /// <summary>Adds the pages, their files and their form.</summary>
    public static WebApplication MapPages(this WebApplication app)
    {
        app.MapRazorComponents<App>();
        app.MapGet("/assets/{hash}/{name}", Asset).ExcludeFromDescription();
        app.MapFormulaForm();
        return app;
    }

    /// <summary>Whether a request is for a page.</summary>
    public static bool IsPage(HttpContext context) => context.GetEndpoint()?.Metadata.GetMetadata<ComponentTypeMetadata>() is not null;

    private static ServedRelease OfRequest(IServiceProvider services)
    {
        var context = services.GetRequiredService<IHttpContextAccessor>().HttpContext;
        return context?.Features.Get<ServedRelease>() ?? throw new InvalidOperationException("A page was rendered outside a request that has a release.");
    }

    private static async Task Asset(string hash, string name, HttpContext context)
    {
        if (hash != PageAssets.Folder || PageAssets.Find(name) is not { } file)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        var coding = ContentCoding.Choose(context.Request.Headers.AcceptEncoding);
        var headers = context.Response.Headers;
        (headers.CacheControl, headers.Vary) = (ForEver, "Accept-Encoding");
        if (coding.Name is { } encoding)
        {
            headers.ContentEncoding = encoding;
        }

        var bytes = file.In(coding);
        (context.Response.ContentType, context.Response.ContentLength) = (file.MediaType, bytes.Length);
        await context.Response.Body.WriteAsync(bytes, context.RequestAborted);
    }
}
