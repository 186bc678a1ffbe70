using Microsoft.OpenApi;

namespace Materia.Api.OpenApi;

/// <summary>The OpenAPI document and the pages made from it.</summary>
public static class Documentation
{
    /// <summary>Where the document is served; also its place in the repository.</summary>
    public const string DocumentPath = "/openapi/materia.v1.json";

    /// <summary>Sets the document up.</summary>
    public static IServiceCollection AddDocumentation(this IServiceCollection services) => services.AddOpenApi("v1", options =>
    {
        options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
        options.AddDocumentTransformer<DocumentDescription>();
        options.AddOperationTransformer<OperationDescription>();
        options.AddSchemaTransformer<ProblemSchema>();
    });

    /// <summary>Serves the document, and Swagger UI with its own assets at <c>/docs</c>.</summary>
    public static WebApplication MapDocumentation(this WebApplication app)
    {
        app.MapOpenApi("/openapi/materia.{documentName}.json").ExcludeFromDescription();
        return app;
    }

    /// <summary>Serves Swagger UI with its own assets at <c>/docs</c>.</summary>
    public static WebApplication UseSwaggerPages(this WebApplication app)
    {
        app.UseSwaggerUI(ui =>
        {
            ui.RoutePrefix = "docs";
            ui.DocumentTitle = "Materia API";
            ui.SwaggerEndpoint(DocumentPath, "Materia v1");
        });
        return app;
    }
}
