namespace Materia.Tests.Seed;

/// <summary>The tables of needs of the seed folder without a fault.</summary>
internal static class SeedNeedTexts
{
    public const string Needs = "tables/needs.csv";
    public const string Effects = "tables/need-effects.csv";

    public const string NeedsText = """
        id,name,subject,opposes,text,evidence,source,locator,check_in,note
        soft-hair,Soft hair,strands,stiff-hair,The hair is soft already.,common-practice,trade-practice,,,
        stiff-hair,Stiff hair,strands,soft-hair,The hair is stiff.,common-practice,trade-practice,,,

        """;

    public const string EffectsText = """
        need,kind,property,temperature,acid,low,high,weight,scope,reason,evidence,source,locator,check_in,note
        soft-hair,target,solid-content,32,,,3,2,,Little of it should stay solid.,common-practice,trade-practice,,,
        soft-hair,target,fatty-acid,,18:1n-9,40,,1,,Oleic acid spreads well.,common-practice,trade-practice,,,
        stiff-hair,exclude,,,,,,,kind:essential-oil,Scent does nothing for it.,common-practice,trade-practice,,,
        stiff-hair,caution,,,,,,,,Ask a hairdresser.,common-practice,trade-practice,,,

        """;
}
