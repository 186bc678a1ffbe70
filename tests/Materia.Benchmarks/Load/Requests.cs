using System.Text;

namespace Materia.Benchmarks.Load;

/// <summary>The requests of the load run, as the bytes that go over the wire.</summary>
internal static class Requests
{
    public static byte[] Constant { get; } = Get("/health/live");

    public static byte[] Record { get; } = Get("/v1/ingredients/shea-butter");

    /// <summary>Two words that name a few ingredients, and a range.</summary>
    public static byte[] Search { get; } = Get("/v1/ingredients?text=shea%20butter&melting=20..45");

    /// <summary>Two words that name dozens, and a range: a full page of twenty hits comes back.</summary>
    public static byte[] SearchFullPage { get; } = Get("/v1/ingredients?text=seed%20oil&iodine=80..140");

    public static byte[] Evaluation { get; } = Post("/v1/evaluations", Formulas.TwelveLines);

    private static byte[] Get(string path) =>
        Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nAccept: application/json\r\n\r\n");

    private static byte[] Post(string path, string json)
    {
        var body = Encoding.UTF8.GetBytes(json);
        return [.. Encoding.ASCII.GetBytes($"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n"), .. body];
    }
}
