using System.Net;
using Materia.Data;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace Materia.Api.Tests.Hosting;

/// <summary>The service as it is, on a real server at a port of its own of this machine.</summary>
public sealed class MateriaApplication : WebApplicationFactory<Program>
{
    private readonly Dictionary<string, string?> settings;

    /// <param name="database">The database to use.</param>
    /// <param name="more">Further settings, such as <c>Materia:RateLimit:PostsPerMinute</c>.</param>
    public MateriaApplication(DatabaseSettings database, params (string Key, string Value)[] more)
    {
        settings = new()
        {
            ["environment"] = "Production",
            ["Logging:LogLevel:Default"] = "Critical",
            ["Logging:LogLevel:Microsoft.Hosting.Lifetime"] = "Critical",
            ["Materia:Database:Provider"] = database.Provider.ToString(),
            ["Materia:Database:ConnectionString"] = database.ConnectionString,
            ["Materia:RateLimit:PostsPerMinute"] = "100000",
        };
        foreach (var (key, value) in more)
        {
            settings[key] = value;
        }

        UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
    }

    /// <summary>Starts the service and gives its address.</summary>
    public Uri Start()
    {
        StartServer();
        return new Uri(Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single());
    }

    /// <summary>A client that follows no redirect and decodes nothing, so that tests see what was sent.</summary>
    public static HttpClient Client(Uri address) =>
        new(new SocketsHttpHandler { AllowAutoRedirect = false, AutomaticDecompression = DecompressionMethods.None }) { BaseAddress = address };

    /// <inheritdoc/>
    protected override IHost CreateHost(IHostBuilder builder)
    {
        builder.ConfigureHostConfiguration(configuration => configuration.AddInMemoryCollection(settings));
        return base.CreateHost(builder);
    }
}
