using Materia.Catalogue;
using Materia.Chemistry.Emulsions;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of emulsions and of natural origin.</summary>
internal static class EmulsionMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = Emulsion.MethodKey,
            Name = "Required and offered HLB",
            Equation = "required = Σ w rHLB / Σ w over the oil phase; offered = Σ w HLB / Σ w over the emulsifiers; of a pair: share of the higher = (required − low)/(high − low), where that is from 0 to 1",
            Validity = "Nonionic emulsifiers and oils with a stored figure. Lecithins, cationic and amphoteric emulsifiers are left out. An offered HLB below 7 is read as water in oil. Absent when under half of the mass concerned has a figure. HLB says the type of an emulsion, not the dose nor the stability; crude oils miss published values.",
            Error = "The arithmetic is exact: seven published blends come out within 0.03. As guidance it is good to about one unit, and lists differ by two.",
            Sources = ["griffin-1949", "griffin-1954", "ocl-2022-hlb", "course-hlb"],
        },
        new Method
        {
            Id = NaturalOrigin.MethodKey,
            Name = "Natural origin content (ISO 16128)",
            Equation = "content = 100 Σ w NOI [%]; without formulation water: the same over everything but the water that was added",
            Validity = "Indices from 0 to 1 by ingredient, as suppliers state them: nothing is computed from names. Water counts 1. A mixture without an index of its own counts by its parts. Absent when more than a twentieth of the mass has no index; the bounds then take those materials as 0 and as 1. It is no approval of a claim and says nothing of safety.",
            Error = "Exact for the indices given.",
            Sources = ["iso-16128", "cosmed-iso-16128-2021"],
        },
    ];
}
