using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Materia.Benchmarks.Load;

/// <summary>
/// Sends one request over and over on keep-alive connections to 127.0.0.1, for a bounded time. Sockets rather than an HTTP
/// client, so that the client's own cost hides as little of the server's as it can.
/// </summary>
internal static class Traffic
{
    public static async Task<(long Count, TimeSpan Elapsed)> SendAsync(int port, byte[] request, int connections, TimeSpan time)
    {
        using var end = new CancellationTokenSource(time);
        var watch = Stopwatch.StartNew();
        var counts = await Task.WhenAll(Enumerable.Range(0, connections).Select(_ => Task.Run(() => SendOnOneAsync(port, request, end.Token))));
        return (counts.Sum(), watch.Elapsed);
    }

    private static async Task<long> SendOnOneAsync(int port, byte[] request, CancellationToken end)
    {
        using var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(new IPEndPoint(IPAddress.Loopback, port), CancellationToken.None);
        var buffer = new byte[256 * 1024];
        long count = 0;
        while (!end.IsCancellationRequested)
        {
            await socket.SendAsync(request, CancellationToken.None);
            await ReadResponseAsync(socket, buffer);
            count++;
        }

        return count;
    }

    private static async Task ReadResponseAsync(Socket socket, byte[] buffer)
    {
        var filled = 0;
        var bodyStart = -1;
        long length = -1;
        while (bodyStart < 0 || (length >= 0 ? filled < bodyStart + length : !EndsChunked(buffer.AsSpan(bodyStart, filled - bodyStart))))
        {
            var read = await socket.ReceiveAsync(buffer.AsMemory(filled));
            if (read == 0)
            {
                throw new IOException("The server closed the connection.");
            }

            filled += read;
            if (bodyStart < 0 && buffer.AsSpan(0, filled).IndexOf("\r\n\r\n"u8) is var header and >= 0)
            {
                bodyStart = header + 4;
                length = ContentLength(buffer.AsSpan(0, bodyStart));
            }
        }
    }

    private static bool EndsChunked(ReadOnlySpan<byte> body) => body.EndsWith("0\r\n\r\n"u8);

    private static long ContentLength(ReadOnlySpan<byte> head)
    {
        var text = Encoding.ASCII.GetString(head);
        if (!text.StartsWith("HTTP/1.1 200", StringComparison.Ordinal))
        {
            throw new IOException($"Expected 200, got: {text[..text.IndexOf('\r', StringComparison.Ordinal)]}");
        }

        const string Name = "\r\nContent-Length: ";
        var start = text.IndexOf(Name, StringComparison.OrdinalIgnoreCase);
        if (start < 0)
        {
            return -1;
        }

        start += Name.Length;
        return long.Parse(text.AsSpan(start, text.IndexOf('\r', start) - start), System.Globalization.CultureInfo.InvariantCulture);
    }
}
