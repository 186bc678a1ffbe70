namespace Materia.Chemistry.Melting;

/// <summary>Says which crystal forms a curve assumes, and what cooling changes.</summary>
internal static class CrystalForms
{
    public static string Describe(SpeciesSystem system)
    {
        double lauric = 0, longChain = 0, other = 0;
        foreach (var c in system.Classes)
        {
            if (c.Class == CrystalClass.Lauric)
            {
                lauric += c.Amount;
            }
            else if (c.Class <= CrystalClass.Triunsaturated)
            {
                longChain += c.Amount;
            }
            else
            {
                other += c.Amount;
            }
        }

        List<string> said = [];
        if (longChain > 0.02)
        {
            said.Add("Long-chain fats are taken in their beta form. Cooled quickly they first set in softer, lower-melting forms and firm up over hours to weeks; cooled slowly they grow large crystals.");
        }

        if (lauric > 0.02)
        {
            said.Add("Lauric fats are taken in their beta-prime form, which they reach within hours.");
        }

        if (other > 0)
        {
            said.Add("Waxes, alcohols and acids crystallise at once on cooling; stirring through the set breaks their network.");
        }

        return said.Count > 0 ? string.Join(" ", said) : "Nothing in it crystallises above −10 °C.";
    }
}
