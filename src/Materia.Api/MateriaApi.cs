using Materia.Api.Designs;
using Materia.Api.Evaluations;
using Materia.Api.Health;
using Materia.Api.Http;
using Materia.Api.Ingredients;
using Materia.Api.Inventory;
using Materia.Api.Matches;
using Materia.Api.OpenApi;
using Materia.Api.Pages;
using Materia.Api.Reference;
using Materia.Api.Serving;
using Materia.Api.Substitutions;
using Materia.Data;
using Microsoft.Extensions.Configuration.Json;
using Microsoft.Extensions.FileProviders;

namespace Materia.Api;

/// <summary>The service put together: what it is made of, the way of a request through it, and its routes.</summary>
public static class MateriaApi
{
    /// <summary>Builds the service; no database is touched before it runs.</summary>
    /// <param name="args">The command line; its <c>--Materia:…</c> switches override the configuration.</param>
    public static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);

        // The program's own settings count wherever it is started from; all others of the usual places come after and win.
        builder.Configuration.Sources.Insert(0, new JsonConfigurationSource
        {
            FileProvider = new PhysicalFileProvider(AppContext.BaseDirectory),
            Path = "appsettings.json",
            Optional = true,
        });
        var settings = builder.Configuration.GetSection("Materia").Get<MateriaSettings>() ?? new();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = BodyLimit.Drained(settings);
        });
        builder.Services.AddSingleton(settings);
        builder.Services.AddReleases(settings.DatabaseIn(builder.Environment.ContentRootPath));
        builder.Services.AddHttp(settings);
        builder.Services.AddEvaluations();
        builder.Services.AddDocumentation();
        builder.Services.AddPages();
        var app = builder.Build();
        app.UseMateria();
        app.MapMateria();
        return app;
    }

    private static void AddReleases(this IServiceCollection services, DatabaseSettings database)
    {
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(database);
        services.AddMateriaDatabase(database);
        services.AddSingleton<CurrentRelease>();
        services.AddScoped<ReleaseSource>();
        services.AddHostedService<ReleaseLoading>();
    }

    private static void AddHttp(this IServiceCollection services, MateriaSettings settings)
    {
        services.ConfigureHttpJsonOptions(json => ApiJson.CopyTo(json.SerializerOptions));
        services.AddSingleton<IProblemDetailsWriter, ProblemWriter>();
        services.AddProblemDetails();
        services.AddCors(ReadSharing.Configure);
        services.AddRateLimiter(limiter => PostLimit.Configure(limiter, settings));

        // The answers hold nothing secret beside what the caller sent, so compressing them over TLS gives nothing away.
        services.AddResponseCompression(compression => compression.EnableForHttps = true);
    }

    private static void UseMateria(this WebApplication app)
    {
        app.UseMiddleware<RequestLog>();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<FailuresAsProblems>();
        app.UseMiddleware<HeadAsGet>();
        app.UseWhen(ReadSharing.Concerns, reads => reads.UseCors());
        app.UseMiddleware<ReleaseHeaders>();
        app.UseWhen(context => HttpMethods.IsPost(context.Request.Method), posts => posts.UseRateLimiter());
        app.UseMiddleware<BodyLimit>();

        // Reads of the catalogue choose their coding themselves, because their entity tag depends on it.
        app.UseWhen(context => context.Features.Get<ServedRelease>() is null || HttpMethods.IsPost(context.Request.Method), others => others.UseResponseCompression());
        app.UseSwaggerPages();
        app.UseRouting();
        app.UseMiddleware<RequestChecks>();
        app.UsePages();
    }

    private static void MapMateria(this WebApplication app)
    {
        app.MapHealth();
        app.MapDocumentation();
        app.MapProblemPages();
        app.MapPages();
        var v1 = app.MapGroup("/v1")
            .ProducesProblem(StatusCodes.Status400BadRequest)
            .ProducesProblem(StatusCodes.Status406NotAcceptable)
            .ProducesProblem(StatusCodes.Status500InternalServerError)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        v1.MapIngredients();
        v1.MapSubstitutes();
        v1.MapIngredientFigures();
        v1.MapSuggestions();
        v1.MapEvaluations();
        v1.MapMatches();
        v1.MapSubstitutions();
        v1.MapDesigns();
        v1.MapFattyAcids();
        v1.MapSources();
        v1.MapMethods();
        v1.MapUses();
        v1.MapLimits();
        v1.MapAllergens();
        v1.MapSubstitutionGroups();
        v1.MapNeeds();
        v1.MapFunctions();
        v1.MapKinds();
        v1.MapInventory();
        v1.MapRelease();
    }
}
