using Materia.Catalogue;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>All statements of a seed directory, each with its place.</summary>
internal static class Statements
{
    /// <summary>The statements of the ingredients, then those of the tables.</summary>
    public static IEnumerable<Placed<Statement>> Of(LoadedSeed seed) =>
        seed.Ingredients.SelectMany(i => Of(i.Value, i.Place))
            .Concat(seed.FattyAcids.Select(a => new Placed<Statement>(a.Value, a.Place)))
            .Concat(seed.Uses.Select(u => new Placed<Statement>(u.Value, u.Place)))
            .Concat(seed.SubstitutionGroups.Select(g => new Placed<Statement>(g.Value, g.Place)))
            .Concat(seed.Regulation.Limits.Rows.Select(l => new Placed<Statement>(l.Value, l.Place)))
            .Concat(seed.Regulation.Allergens.Rows.Select(a => new Placed<Statement>(a.Value, a.Place)))
            .Concat(seed.Needs.Needs.Rows.Select(n => new Placed<Statement>(n.Value, n.Place)))
            .Concat(seed.Needs.Effects.Rows.Select(e => new Placed<Statement>(e.Value.Effect, e.Place)));

    /// <summary>The elements of a list with their places.</summary>
    public static IEnumerable<Placed<T>> Items<T>(IReadOnlyList<T> list, Place owner, string member)
    {
        for (var i = 0; i < list.Count; i++)
        {
            yield return new(list[i], owner.Item(member, i));
        }
    }

    /// <summary>The statements of one ingredient.</summary>
    public static IEnumerable<Placed<Statement>> Of(Ingredient ingredient, Place place) =>
        Single(ingredient.Origin, place, "origin")
            .Concat(Single(ingredient.Description, place, "description"))
            .Concat(Single(ingredient.Charge, place, "charge"))
            .Concat(Items<Statement>(ingredient.Names, place, "names"))
            .Concat(Items<Statement>(ingredient.Numbers, place, "numbers"))
            .Concat(Items<Statement>(ingredient.Functions, place, "functions"))
            .Concat(Items<Statement>(ingredient.Properties, place, "properties"))
            .Concat(Items(ingredient.FattyAcidProfiles, place, "fattyAcidProfiles")
                .SelectMany(profile => Items<Statement>(profile.Value.Shares, profile.Place, "shares")))
            .Concat(Items(ingredient.TriacylglycerolProfiles, place, "triacylglycerolProfiles")
                .SelectMany(profile => Items<Statement>(profile.Value.Shares, profile.Place, "shares")))
            .Concat(Items<Statement>(ingredient.Constituents, place, "constituents"))
            .Concat(Items<Statement>(ingredient.Parts, place, "parts"))
            .Concat(Items<Statement>(ingredient.UsageLevels, place, "usageLevels"))
            .Concat(Items<Statement>(ingredient.Handling, place, "handling"))
            .Concat(Items<Statement>(ingredient.SubstitutionGroups, place, "substitutionGroups"))
            .Concat(Items<Statement>(ingredient.BodyNotes, place, "bodyNotes"))
            .Concat(Items<Statement>(ingredient.Comedogenic, place, "comedogenic"))
            .Concat(Items<Statement>(ingredient.Cautions, place, "cautions"));

    private static IEnumerable<Placed<Statement>> Single(Statement? statement, Place owner, string member) =>
        statement is null ? [] : [new(statement, owner.Member(member))];
}
