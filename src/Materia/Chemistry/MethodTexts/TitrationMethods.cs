using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of the iodine and saponification value.</summary>
internal static class TitrationMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = IodineValue.Method,
            Name = "Iodine value of the lipid phase",
            Equation = "IV = Σ w IV_i / Σ w over the lipid phase [g/(100.g)]. Of a triglyceride: Σ p 253.809 × 3 D/(3 M + 38.049) × (1 − U/100); of free fatty acids: Σ p 253.809 D/M; of a wax ester: 100 × 253.809 (D_acid + D_alcohol)/(M_acid + M_alcohol − 18.015). p the share of an acid [%], D its double bonds, M its molar mass [g/mol], U unsaponifiable matter [%].",
            Validity = "Each ingredient's value is worked out from its fatty acids where that is valid, because composition and value then belong to one sample. Where it is not, the stored measured or specified figure is taken: natural waxes, esters, and oils with conjugated acids such as pomegranate, whose double bonds do not take up iodine fully. Saturated alcohols and hydrocarbons count as 0. Hydroxy, epoxy and cyclopropenoid acids are computed and flagged. A bare upper limit stands for half of itself, and a single measured figure is given ±5 as well. Clays, powders, starches and essential oils are outside the lipid phase. Absent when under half of it has a value.",
            Error = "±5 for a computed value (14 oils with composition and titration of one sample: bias +2.4, mean deviation 3.0, largest 7.6), joined to the bounds of the ingredient's limits, or to its stored range where it has no limits. The unsaponifiable part's own iodine is unknown: the lower end counts it as none, the upper as the fat's.",
            Sources = ["aocs-cd-1c-85", "iso-3961-2018", "aocs-cd-1d-92", "pettursson-2002", "ryan-1984", "svo-compilation"],
        },
        new Method
        {
            Id = SaponificationValue.Method,
            Name = "Saponification value of the lipid phase",
            Equation = "SV = Σ w SV_i / Σ w over the lipid phase [mg/g]. Of a triglyceride: 3000 × 56.106/(3 M + 38.049) × (1 − U/100); of free fatty acids: 56106/M; of a wax ester: 56106/(M_acid + M_alcohol − 18.015). M the mean molar mass by moles [g/mol], U unsaponifiable matter [%].",
            Validity = "Worked out from the fatty acids for butters, oils, free acids and wax esters with a profile of both halves; stored figures for other waxes and esters, or acid and ester value together. Fatty alcohols and hydrocarbons count as 0. Clays, powders, starches and essential oils are outside the lipid phase. Absent when under half of it has a value. The mean by moles is exact; an arithmetic mean of molar masses, which some tables use, comes out 3 % low for coconut.",
            Error = "±2 where the unsaponifiable matter is known, ±4 where it is not, joined to the ingredient's limits or stored range.",
            Sources = ["aocs-cd-3a-94", "svo-compilation"],
        },
        new Method
        {
            Id = SaponificationValue.SodiumHydroxideMethod,
            Name = "Sodium hydroxide for the same saponification",
            Equation = "NaOH = SV × 39.997/56.106 [mg/g]",
            Validity = "For pure sodium hydroxide; divide by the assay of what is weighed.",
            Error = "That of the saponification value.",
            Sources = ["aocs-cd-3a-94"],
        },
    ];
}
