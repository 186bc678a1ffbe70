using Materia.Catalogue;

namespace Materia.Chemistry.MethodTexts;

/// <summary>Methods of composition and of ranges.</summary>
internal static class CompositionMethods
{
    public static IReadOnlyList<Method> All { get; } =
    [
        new Method
        {
            Id = CompositionSum.Method,
            Name = "Fatty acids of a blend by mass",
            Equation = "p = Σ w f p_i / Σ w f: w the mass of a component, p_i its share of an acid brought to 100 % [%], f the fatty acids in one gram of it [g]: 3 M/(3 M + 38.049) for a triglyceride, 1 for free acids, M_acid/M_ester for a wax ester, times 1 − U/100 where the unsaponifiable matter U [%] is known.",
            Validity = "Any blend of fats with a sample profile that adds up to 95 to 102 %. Rows are kept as the analyses name them; totals add up all straight-chain isomers of one length and number of double bonds, conjugated ones included. Alcohols of wax esters are listed apart. Absent when under half of the fat-bearing mass has a profile.",
            Error = "Exact for the profiles given. Low and high are what the standards' limits guarantee when every other acid keeps to its own; an oil without a standard shows no range, which does not mean that it has none.",
            Sources = ["jcgm-100-2008", "aocs-cd-1c-85"],
        },
        new Method
        {
            Id = "guaranteed-bounds",
            Name = "Guaranteed bounds from ingredient ranges",
            Equation = "min and max of Σ f x under lo ≤ x ≤ hi and Σ x = 100: begin at lo, spend the rest on the shares with the smallest (largest) f. Means by moles are bounded by repeating this until the ratio stands still.",
            Validity = "Exact for any figure that is linear in the shares, and for ratios of two such figures. Not a standard deviation: every composition inside the limits lies between the bounds, however unlikely. A range profile whose limits allow no whole composition is not used.",
            Error = "None of its own; the model's error is added to each end.",
            Sources = ["jcgm-100-2008"],
        },
        new Method
        {
            Id = "profile-distance",
            Name = "Distance of two fatty-acid profiles",
            Equation = "d = √(Σ(√x − √y)²/2), x and y the shares by chain length and double bonds, 0 to 1 (Hellinger distance) [1]",
            Validity = "Comparing a gas chromatogram with the catalogue, over the acids that it names. Isomers are added up first, because many analyses do not part them. It ranks, it does not prove: oils of one kind differ between harvests and bred varieties, and corn, sesame, pumpkin and soybean lie close together.",
            Error = "Of 96 commercial oils in seven classes, none of them part of the catalogue, about 70 come out first as their own kind and 90 among the first five. Two other distances were tried on the same oils and found fewer, so the rate flatters a little.",
            Sources = ["brodnjak-voncina-2005"],
        },
        new Method
        {
            Id = Matching.ProfileMatching.MixtureMethodId,
            Name = "Mixture of two fats that explains a fatty-acid profile",
            Equation = "x = Σ(m − q)(p − q)/Σ(p − q)², held between 0 and 1: m, p and q the shares by chain of the measurement and of the two fats [%]. What remains is Σ|m − x p − (1 − x) q|/2, the share of the fatty acids that differs [%].",
            Validity = "Exact least squares for each pair, over the acids that the measurement names, among all pairs of fats with a sample. Given only where it leaves at most half of what the nearest single fat leaves, and that is 4 % or more, and only when the measurement lies outside the published range of the fat claimed (without a claim: of each of the nearest). Two shares fitted to seven or eight acids fit many profiles: several mixtures may do as well, and a harvest unlike the catalogue's sample looks like a mixture too.",
            Error = "Not measured against known mixtures from print; mixtures computed from two of the catalogue's own samples are found again exactly.",
            Sources = ["jcgm-100-2008"],
        },
    ];
}
