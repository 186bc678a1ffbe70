namespace Materia.Tests.Seed;

/// <summary>A mixture and what is said about working with it, without a fault, in canonical form. Nothing in it is a fact.</summary>
internal static class SeedBlendTexts
{
    public const string Blend = "ingredients/emulsifier/example-blend.json";
    public const string Groups = "tables/substitution-groups.csv";

    public const string BlendText =
        """
        {
          "id": "example-blend",
          "kind": "emulsifier",
          "names": [
            { "text": "Example blend", "kind": "common", "language": "en", "evidence": "common-practice", "source": "trade-practice" },
            { "text": "Exemplum Blend", "kind": "inci", "evidence": "memory", "source": "recalled" }
          ],
          "description": { "text": "A blend of examples that stands in for any mixture. It is made up.", "evidence": "common-practice", "source": "trade-practice" },
          "charge": { "charge": "nonionic", "evidence": "common-practice", "source": "trade-practice" },
          "parts": [
            { "inciName": "Exemplum Vulgare Seed Butter", "ingredient": "example-butter", "low": 60, "typical": 70, "high": 80, "evidence": "published", "source": "example-book", "locator": "p. 20" },
            { "inciName": "Cetyl Alcohol", "cas": "36653-82-4", "low": 20, "typical": 29, "high": 35, "evidence": "memory", "source": "recalled" }
          ],
          "usageLevels": [
            { "use": "lip-balm", "low": 2, "typical": 5, "high": 8, "evidence": "common-practice", "source": "trade-practice" },
            { "use": "hair-oil-leave-on", "high": 1, "evidence": "memory", "source": "recalled" }
          ],
          "handling": [
            { "topic": "phase", "phase": "melt", "text": "Melt it with the waxes.", "evidence": "common-practice", "source": "trade-practice" },
            { "topic": "storage", "text": "Keep it cool and dry.", "evidence": "memory", "source": "recalled" }
          ],
          "substitutionGroups": [
            { "group": "example-group", "reference": true, "swapRatio": 1, "text": "It holds best.", "evidence": "common-practice", "source": "trade-practice" }
          ],
          "bodyNotes": [
            { "subject": "hair", "text": "Tresses treated with it broke less when combed.", "evidence": "published", "source": "example-book", "locator": "p. 21" }
          ]
        }

        """;

    public const string GroupsText =
        """
        id,name,description,evidence,source,locator,check_in,note
        example-group,Example group,"Holds oil in water, more or less.",common-practice,trade-practice,,,

        """;
}
