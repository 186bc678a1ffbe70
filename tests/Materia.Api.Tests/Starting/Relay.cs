using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Materia.Api.Tests.Starting;

/// <summary>
/// A port of this machine that leads to a PostgreSQL server once it is opened, and to nothing before: a database that is down
/// and comes up.
/// </summary>
internal sealed class Relay : IAsyncDisposable
{
    private readonly CancellationTokenSource end = new();
    private readonly TcpListener listener;
    private readonly EndPoint server;
    private Task accepting = Task.CompletedTask;

    /// <param name="connectionString">The server behind it.</param>
    public Relay(string connectionString)
    {
        var target = new NpgsqlConnectionStringBuilder(connectionString);
        server = target.Host!.StartsWith('/')
            ? new UnixDomainSocketEndPoint(Path.Combine(target.Host, $".s.PGSQL.{target.Port}"))
            : new DnsEndPoint(target.Host, target.Port);

        // Bound but not yet listening: the port is ours, and whoever connects is refused.
        listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Server.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        var port = ((IPEndPoint)listener.Server.LocalEndPoint!).Port;
        ConnectionString = new NpgsqlConnectionStringBuilder(connectionString)
        {
            Host = "127.0.0.1",
            Port = port,
            SslMode = SslMode.Disable,
            GssEncryptionMode = GssEncryptionMode.Disable,
            Timeout = 5,
            Pooling = false,
        }.ToString();
    }

    /// <summary>A connection string that leads through the relay.</summary>
    public string ConnectionString { get; }

    /// <summary>Starts to let connections through.</summary>
    public void Open()
    {
        listener.Server.Listen();
        accepting = AcceptAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await end.CancelAsync();
        listener.Server.Dispose();
        await accepting;
        end.Dispose();
    }

    private async Task AcceptAsync()
    {
        while (!end.IsCancellationRequested)
        {
            try
            {
                _ = CarryAsync(await listener.Server.AcceptAsync(end.Token));
            }
            catch (Exception fault) when (fault is OperationCanceledException or ObjectDisposedException or SocketException)
            {
                return;
            }
        }
    }

    private async Task CarryAsync(Socket client)
    {
        var protocol = server is UnixDomainSocketEndPoint ? ProtocolType.Unspecified : ProtocolType.Tcp;
        using var upstream = server is UnixDomainSocketEndPoint
            ? new Socket(AddressFamily.Unix, SocketType.Stream, protocol)
            : new Socket(SocketType.Stream, protocol);
        await upstream.ConnectAsync(server);
        await using var down = new NetworkStream(client, ownsSocket: true);
        await using var up = new NetworkStream(upstream);
        await Task.WhenAny(down.CopyToAsync(up, end.Token), up.CopyToAsync(down, end.Token));
    }
}
