using System.Net.Sockets;

namespace Materia.Api.Tests.Databases;

/// <summary>Asks whether a Docker engine is there, without waiting long for one that is not.</summary>
internal static class DockerEngine
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>True when the engine that <c>DOCKER_HOST</c> names, or the one on the usual socket, answers a ping within two seconds.</summary>
    public static async Task<bool> AnswersAsync()
    {
        var host = Environment.GetEnvironmentVariable("DOCKER_HOST");
        var engine = new Uri(string.IsNullOrEmpty(host) ? "unix:///var/run/docker.sock" : host);
        if (engine.Scheme == "unix" && !File.Exists(engine.LocalPath))
        {
            return false;
        }

        using var handler = new SocketsHttpHandler();
        if (engine.Scheme == "unix")
        {
            handler.ConnectCallback = async (_, cancellation) =>
            {
                var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
                await socket.ConnectAsync(new UnixDomainSocketEndPoint(engine.LocalPath), cancellation);
                return new NetworkStream(socket, ownsSocket: true);
            };
        }

        var authority = engine.Scheme == "unix" ? "docker" : engine.Authority;
        using var client = new HttpClient(handler) { Timeout = Patience };
        try
        {
            using var answer = await client.GetAsync(new Uri($"http://{authority}/_ping"));
            return answer.IsSuccessStatusCode;
        }
        catch (Exception fault) when (fault is HttpRequestException or TaskCanceledException or SocketException)
        {
            return false;
        }
    }
}
