using Materia.Api.Health;
using Materia.Api.Http;
using Materia.Api.Serving;

namespace Materia.Api;

/// <summary>The service put together: what it is made of, the way of a request through it, and its routes.</summary>
public static class MateriaApi
{
    /// <summary>Builds the service; no database is touched before it runs.</summary>
    /// <param name="args">The command line; its <c>--Materia:…</c> switches override the configuration.</param>
    public static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);
        var settings = builder.Configuration.GetSection("Materia").Get<MateriaSettings>() ?? new();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = settings.RequestBodyLimit;
        });
        builder.Services.AddMateria(settings);
        var app = builder.Build();
        app.UseMateria();
        app.MapMateria();
        return app;
    }

    private static void AddMateria(this IServiceCollection services, MateriaSettings settings)
    {
        services.AddSingleton(settings);
        services.AddSingleton<CurrentRelease>();
        services.ConfigureHttpJsonOptions(json => ApiJson.CopyTo(json.SerializerOptions));
        services.AddSingleton<IProblemDetailsWriter, ProblemWriter>();
        services.AddProblemDetails();
        services.AddOpenApi("v1");
        services.AddResponseCompression(compression => compression.EnableForHttps = true);
        services.AddRateLimiter(limiter => PostLimit.Configure(limiter, settings));
    }

    private static void UseMateria(this WebApplication app)
    {
        app.UseMiddleware<RequestLog>();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<FailuresAsProblems>();
        app.UseMiddleware<HeadAsGet>();
        app.UseMiddleware<ReleaseHeaders>();
        app.UseWhen(context => HttpMethods.IsPost(context.Request.Method), posts => posts.UseRateLimiter());
        app.UseRouting();
        app.UseMiddleware<RequestChecks>();
    }

    private static void MapMateria(this WebApplication app)
    {
        app.MapOpenApi("/openapi/materia.{documentName}.json");
        app.MapHealth();
        _ = app.MapGroup("/v1");
    }
}
