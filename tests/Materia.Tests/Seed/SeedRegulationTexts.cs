namespace Materia.Tests.Seed;

/// <summary>Limits and allergens without a fault, in canonical form. Nothing in them is a rule.</summary>
internal static class SeedRegulationTexts
{
    public const string Limits = "tables/limits.csv";
    public const string LimitMembers = "tables/limit-members.csv";
    public const string Allergens = "tables/allergens.csv";
    public const string AllergenMembers = "tables/allergen-members.csv";

    public const string LimitsText =
        """
        id,substance,authority,kind,exposure,sites,uses,except_uses,ifra_categories,scope_text,max_percent,below,expressed_as,ratio_group,except_ingredients,conditions,warning,warning_above,from,old_stock_until,evidence,source,locator,check_in,note
        eu-lips,Linalool,eu,restricted,,lips;face,,,,Lip products,0.50,true,alcohol,,,Not for children.,Contains linalool,0.1,2025-11-01,2027-04-30,published,example-book,p. 30,,
        eu-other,Linalool,eu,restricted,leave-on,,,lip-balm,,Other products,1.0,,,,,,,,,,memory,recalled,,example-book,"Recalled, not read."
        ifra-hair,Example oil,ifra,phototoxic,,,hair-oil-leave-on,,7A;7B,Categories 7A and 7B,0.4,,,light,example-butter,,,,,,memory,recalled,,,
        eu-ban,Camphor,eu,prohibited,,,,,,All products,,,,,,,,,,,memory,recalled,,,

        """;

    public const string LimitMembersText =
        """
        limit,name,cas,inci_name,ingredient,factor
        eu-lips,linalool,78-70-6,Linalool,,
        eu-lips,linalyl acetate,115-95-7,,,0.785
        eu-other,linalool,78-70-6,,,
        ifra-hair,the oil,,,example-oil,
        eu-ban,camphor,76-22-2,,,

        """;

    public const string AllergensText =
        """
        id,declaration_name,natural_extract,leave_on_threshold,rinse_off_threshold,new_products_until,old_stock_until,evidence,source,locator,check_in,note
        linalool,Linalool,,0.001,0.01,,,published,example-book,p. 31,,
        example-oil,Example Oil/Extract,true,0.001,0.01,2026-07-31,2028-07-31,published,example-book,p. 32,,

        """;

    public const string AllergenMembersText =
        """
        allergen,name,cas,inci_name,ingredient,factor
        linalool,linalool,78-70-6,Linalool,,
        example-oil,the oil,,Exemplum Vulgare Oil,example-oil,

        """;
}
