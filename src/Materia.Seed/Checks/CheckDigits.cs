using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>The form and check digit of CAS and EC numbers.</summary>
internal static class CheckDigits
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        foreach (var (ingredient, place) in seed.Ingredients)
        {
            foreach (var (number, at) in Statements.Items(ingredient.Numbers, place, "numbers"))
            {
                if (number.Registry == Registry.Cas)
                {
                    CheckCas(number.Number, at, faults);
                }
                else if (!EcNumber.IsValid(number.Number))
                {
                    faults.Add(at, $"EC number \"{number.Number}\" is wrong in form or check digit; look it up and correct it");
                }
            }

            foreach (var (constituent, at) in Statements.Items(ingredient.Constituents, place, "constituents"))
            {
                CheckCas(constituent.Cas, at, faults);
            }

            foreach (var (part, at) in Statements.Items(ingredient.Parts, place, "parts"))
            {
                CheckCas(part.Cas, at, faults);
            }
        }

        foreach (var (acid, place) in seed.FattyAcids)
        {
            CheckCas(acid.Cas, place, faults);
        }
    }

    private static void CheckCas(string? number, Place at, FaultList faults)
    {
        if (number is not null && !CasNumber.IsValid(number))
        {
            faults.Add(at, $"CAS number \"{number}\" is wrong in form or check digit; look it up and correct it");
        }
    }
}
