namespace Materia.Tests.Seed;

/// <summary>A small seed directory without a fault, in canonical form. Its figures are made up to be broken; none is a fact.</summary>
internal static class SeedTexts
{
    public const string Butter = "ingredients/butter/example-butter.json";
    public const string Oil = "ingredients/essential-oil/example-oil.json";
    public const string Book = "sources/example-book.json";
    public const string Recalled = "sources/recalled.json";
    public const string Trade = "sources/trade-practice.json";
    public const string Acids = "tables/fatty-acids.csv";
    public const string Uses = "tables/uses.csv";

    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Butter] =
            """
            {
              "id": "example-butter",
              "formerIds": [ "old-butter", "older-butter" ],
              "kind": "butter",
              "origin": { "from": "plant", "species": "Exemplum vulgare", "part": "seed", "allergenFamilies": [ "tree-nut" ], "evidence": "published", "source": "example-book", "locator": "p. 1" },
              "names": [
                { "text": "Example butter", "kind": "common", "language": "en", "evidence": "common-practice", "source": "trade-practice" },
                { "text": "Exemplum Vulgare Seed Butter", "kind": "inci", "evidence": "published", "source": "example-book", "locator": "p. 1" },
                { "text": "beurre d'exemple", "kind": "synonym", "language": "fr", "evidence": "memory", "source": "recalled", "checkIn": "example-book" }
              ],
              "numbers": [
                { "registry": "cas", "number": "8001-79-4", "evidence": "published", "source": "example-book", "locator": "p. 2" },
                { "registry": "ec", "number": "232-293-8", "evidence": "published", "source": "example-book", "locator": "p. 2" }
              ],
              "functions": [
                { "function": "skin-conditioning", "evidence": "published", "source": "example-book", "locator": "p. 3" }
              ],
              "properties": [
                { "property": "melting-range", "low": 30, "typical": 33.5, "high": 37, "unit": "Cel", "evidence": "published", "source": "example-book", "locator": "p. 4" },
                { "property": "density", "typical": 0.910, "unit": "g/mL", "at": { "temperature": 20 }, "used": true, "evidence": "published", "source": "example-book", "locator": "p. 5" },
                { "property": "density", "typical": 0.905, "unit": "g/mL", "at": { "temperature": 20.0 }, "evidence": "memory", "source": "recalled" },
                { "property": "density", "typical": 0.880, "unit": "g/mL", "at": { "temperature": 60 }, "evidence": "memory", "source": "recalled" },
                { "property": "relative-density", "typical": 0.9, "unit": "1", "at": { "temperature": 20, "waterTemperature": 20 }, "evidence": "memory", "source": "recalled" }
              ],
              "fattyAcidProfiles": [
                {
                  "label": "one sample",
                  "kind": "sample",
                  "shares": [
                    { "acid": "16:0", "typical": 25.5, "evidence": "published", "source": "example-book", "locator": "p. 6" },
                    { "acid": "18:0", "typical": 34, "evidence": "published", "source": "example-book", "locator": "p. 6" },
                    { "acid": "18:1n-9", "typical": 40, "evidence": "published", "source": "example-book", "locator": "p. 6" }
                  ]
                },
                {
                  "label": "alcohols of the sample",
                  "kind": "sample",
                  "of": "alcohols",
                  "shares": [
                    { "acid": "16:0-ol", "typical": 99, "evidence": "memory", "source": "recalled" }
                  ]
                },
                {
                  "label": "ranges of a standard",
                  "kind": "range",
                  "shares": [
                    { "acid": "16:0", "low": 20, "high": 30, "evidence": "memory", "source": "recalled" },
                    { "acid": "18:1n-9", "low": 35, "high": 45, "evidence": "memory", "source": "recalled" }
                  ]
                }
              ],
              "triacylglycerolProfiles": [
                {
                  "label": "a whole analysis",
                  "used": true,
                  "shares": [
                    { "species": "SOS", "typical": 60.4, "evidence": "published", "source": "example-book", "locator": "p. 10" },
                    { "species": "LaMP", "low": 28, "typical": 32, "high": 36, "evidence": "published", "source": "example-book", "locator": "p. 10" },
                    { "species": "SLO+OOO", "low": 8, "high": 9, "evidence": "published", "source": "example-book", "locator": "p. 10", "note": "printed as one" }
                  ]
                },
                {
                  "label": "the main species of another",
                  "shares": [
                    { "species": "SOP", "typical": 41.6, "evidence": "memory", "source": "recalled" }
                  ]
                }
              ],
              "substitutionGroups": [
                { "group": "example-group", "swapRatio": 1.25, "text": "It holds less.", "evidence": "common-practice", "source": "trade-practice" }
              ],
              "comedogenic": [
                { "low": 0, "high": 2, "irritancy": 1, "tested": "the butter", "evidence": "published", "source": "example-book", "locator": "p. 7" }
              ],
              "cautions": [
                { "text": "Patch test it first.", "evidence": "common-practice", "source": "trade-practice" }
              ]
            }

            """,
        [Oil] =
            """
            {
              "id": "example-oil",
              "kind": "essential-oil",
              "names": [
                { "text": "Example oil", "kind": "common", "language": "en", "evidence": "common-practice", "source": "trade-practice" }
              ],
              "constituents": [
                { "substance": "linalool", "cas": "78-70-6", "low": 25, "typical": 35, "high": 45, "evidence": "published", "source": "example-book", "locator": "p. 8" },
                { "substance": "camphor", "high": 0.5, "used": true, "evidence": "published", "source": "example-book", "locator": "p. 8" },
                { "substance": "camphor", "typical": 0.4, "evidence": "memory", "source": "recalled" }
              ]
            }

            """,
        [Book] =
            """
            {
              "id": "example-book",
              "kind": "book",
              "title": "A book of examples"
            }

            """,
        [Recalled] =
            """
            {
              "id": "recalled",
              "kind": "recollection",
              "title": "Recalled, not checked"
            }

            """,
        [Trade] =
            """
            {
              "id": "trade-practice",
              "kind": "trade-practice",
              "title": "Trade practice"
            }

            """,
        [SeedBlendTexts.Blend] = SeedBlendTexts.BlendText,
        [SeedBlendTexts.Groups] = SeedBlendTexts.GroupsText,
        [SeedRegulationTexts.Limits] = SeedRegulationTexts.LimitsText,
        [SeedRegulationTexts.LimitMembers] = SeedRegulationTexts.LimitMembersText,
        [SeedRegulationTexts.Allergens] = SeedRegulationTexts.AllergensText,
        [SeedRegulationTexts.AllergenMembers] = SeedRegulationTexts.AllergenMembersText,
        [SeedNeedTexts.Needs] = SeedNeedTexts.NeedsText,
        [SeedNeedTexts.Effects] = SeedNeedTexts.EffectsText,
        [Acids] =
            """
            symbol,name,systematic_name,cas,carbons,double_bonds,hydroxyls,alcohol,molar_mass,melting_point,evidence,source,locator,check_in,note
            16:0,palmitic acid,hexadecanoic acid,57-10-3,16,0,,,256.43,62.9,published,example-book,p. 9,,
            18:0,stearic acid,octadecanoic acid,57-11-4,18,0,0,false,284.48,69.6,published,example-book,p. 9,,
            18:1n-9,oleic acid,,112-80-1,18,1,,,282.47,13.4,memory,recalled,,example-book,"two crystal forms, ""alpha"" and ""gamma"", differ"
            18:1n-9-12OH,ricinoleic acid,,141-22-0,18,1,1,,298.47,5.5,memory,recalled,,,
            "18:1-12,13ep",vernolic acid,,503-07-1,18,1,,,296.45,,memory,recalled,,,
            cyc-19:1,sterculic acid,,738-87-4,19,1,,,294.5,18,memory,recalled,,,
            16:0-ol,cetyl alcohol,,36653-82-4,16,0,,true,242.45,49.3,memory,recalled,,,

            """,
        [Uses] =
            """
            id,name,exposure,site,ifra_category,caution,description,evidence,source,locator,check_in,note
            hair-oil-leave-on,Hair oil,leave-on,hair,7B,Keep it out of the eyes.,"Stays in the hair, a few drops.",common-practice,trade-practice,,,
            lip-balm,Lip balm,leave-on,lips,1,,Stays on the lips.,common-practice,trade-practice,,,

            """,
    };
}
