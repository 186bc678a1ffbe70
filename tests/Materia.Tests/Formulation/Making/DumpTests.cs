using System.Globalization;
using System.Text;
using System.Text.Json;
using Materia.Formulation;
namespace Materia.Tests.Formulation.Making;
public sealed class DumpTests
{
    [Fact]
    public void Dump()
    {
        var b = new StringBuilder();
        foreach (var json in new[] { Plans.WhippedMask, Plans.WaxBalm, Plans.OilBlend, Plans.Cream, Plans.Powder })
        {
            var p = Plans.Of(json);
            b.Append("##### " + p.Route + "\n");
            foreach (var s in p.Steps)
            {
                b.Append(CultureInfo.InvariantCulture, $"{s.Number} [{s.Phase}] T={s.Temperature} D={s.Duration}\n   {s.Action}\n   watch: {s.WatchFor}\n");
                foreach (var i in s.Ingredients) b.Append(CultureInfo.InvariantCulture, $"     - {i.Name} {i.Percent}% {i.Mass} {i.Phase}: {i.Because} best<{i.BestBelow} max {i.NotAbove}; notes {string.Join(" | ", i.Notes.Select(n => n.Text))}\n");
                foreach (var c in s.Cautions) b.Append("     ! " + c.Text + "\n");
            }
            b.Append(JsonSerializer.Serialize(new { p.Heating, p.Cooling, p.Whipping, p.Powders, p.Graininess, p.Assumed, p.Warnings }, FormulationJson.Options) + "\n");
        }
        File.WriteAllText("/tmp/plans.txt", b.ToString());
    }
}
