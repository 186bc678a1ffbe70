using System.Security.Cryptography;
using System.Text;

namespace Materia.Api.Documents;

/// <summary>The style of documents, which stands in the page itself; the content security policy lets this one in by its hash.</summary>
internal static class PaperStyle
{
    /// <summary>The style sheet.</summary>
    public const string Text = """
        :root { color-scheme: light dark; --ink: #1d2021; --soft: #565248; --line: #b9b2a3; --paper: #fffdf8; --note: #f3ecdc; }
        @media (prefers-color-scheme: dark) { :root { --ink: #ece7dc; --soft: #b9b2a3; --line: #5d584d; --paper: #1b1c1c; --note: #2c2a24; } }
        * { box-sizing: border-box; }
        body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 Georgia, "DejaVu Serif", serif; }
        main { max-width: 52rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
        h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 1rem; }
        h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; border-bottom: 1px solid var(--line); padding-bottom: .2rem; }
        h3 { font-size: 1.05rem; margin: 1.4rem 0 .3rem; }
        p { margin: .4rem 0 .8rem; max-width: 42rem; overflow-wrap: anywhere; }
        .note { background: var(--note); border-left: 4px solid var(--soft); padding: .5rem .8rem; }
        .scroll { overflow-x: auto; margin: .6rem 0 1rem; }
        table { border-collapse: collapse; width: 100%; font-size: .95rem; }
        caption { text-align: left; color: var(--soft); font-style: italic; padding-bottom: .3rem; }
        th, td { border: 1px solid var(--line); padding: .35rem .5rem; text-align: left; vertical-align: top; }
        th { font-weight: 600; }
        .number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        td.blank { min-width: 5.5rem; }
        ul { padding-left: 1.3rem; margin: .4rem 0 1rem; }
        li { margin: .25rem 0; max-width: 42rem; }
        ul.ticks { list-style: none; padding-left: 0; }
        .box { display: inline-block; width: .95em; height: .95em; border: 1.5px solid currentColor; margin-right: .6em; vertical-align: -.1em; }
        figure { margin: .8rem 0 1.2rem; }
        figure svg { max-width: 100%; height: auto; background: #fff; }
        figcaption { color: var(--soft); font-size: .92rem; max-width: 42rem; }
        dl.blanks { display: grid; grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); gap: .4rem 1.5rem; margin: .5rem 0 1rem; }
        dl.blanks div { display: flex; gap: .6rem; align-items: baseline; }
        dl.blanks dd { flex: 1; margin: 0; border-bottom: 1px solid var(--soft); min-height: 1.5rem; }
        @media print {
          :root { --ink: #000; --soft: #333; --line: #777; --paper: #fff; --note: #fff; }
          body { font-size: 10.5pt; } main { max-width: none; padding: 0; }
          h2, h3 { break-after: avoid; } tr, figure, li { break-inside: avoid; }
          .scroll { overflow: visible; }
          @page { margin: 16mm; }
        }
        """;

    /// <summary>The policy that a document is sent with.</summary>
    public static string Policy { get; } =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Text)))}'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";
}
