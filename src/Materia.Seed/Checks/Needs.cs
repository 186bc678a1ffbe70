using Materia.Catalogue.Needs;
using Materia.Formulation.Scopes;
using Materia.Seed.Reading;
using Materia.Seed.Tables;

namespace Materia.Seed.Checks;

/// <summary>Needs and what follows from them: each effect belongs to a need, says what its sort asks for and nothing else, and names sets and acids that exist.</summary>
internal static class Needs
{
    private const decimal GreatestWeight = 10;

    public static void Check(LoadedSeed seed, FaultList faults)
    {
        var needs = seed.Needs.Needs.Rows.Select(n => n.Value.Id).ToHashSet(StringComparer.Ordinal);
        var named = seed.Needs.Effects.Rows.Select(e => e.Value.Need).ToHashSet(StringComparer.Ordinal);
        foreach (var (need, place) in seed.Needs.Needs.Rows)
        {
            if (need.Opposes is { } other && (other == need.Id || (seed.Needs.Needs.IsComplete && !needs.Contains(other))))
            {
                faults.Add(place, $"opposes \"{other}\" is no other need of {NeedTable.Path}; correct the key or leave it out");
            }

            if (seed.Needs.Effects.IsComplete && !named.Contains(need.Id))
            {
                faults.Add(place, $"nothing follows from \"{need.Id}\"; add rows to {NeedTable.EffectsPath}");
            }
        }

        foreach (var ((owner, effect), place) in seed.Needs.Effects.Rows)
        {
            if (seed.Needs.Needs.IsComplete && !needs.Contains(owner))
            {
                faults.Add(place, $"need \"{owner}\" is not in {NeedTable.Path}; add a row or correct the key");
            }

            CheckTarget(effect, place, faults);
            CheckAcid(effect, seed, place, faults);
            CheckScope(effect, seed, place, faults);
        }
    }

    private static void CheckTarget(NeedEffect effect, Place place, FaultList faults)
    {
        var isTarget = effect.Kind == NeedEffectKind.Target;
        if (isTarget && (effect.Property is null || (effect.Low ?? effect.High) is null || effect.Weight is not (> 0 and <= GreatestWeight)))
        {
            faults.Add(place, $"a target needs property, low or high, and a weight above 0 and at most {GreatestWeight}; fill them in");
        }

        if (!isTarget && (effect.Property is not null || effect.Temperature is not null || effect.Acid is not null || (effect.Low ?? effect.High ?? effect.Weight) is not null))
        {
            faults.Add(place, "property, temperature, acid, low, high and weight belong to a target; leave them out");
        }

        if (effect.Low > effect.High)
        {
            faults.Add(place, "low is above high; correct one of them");
        }

        var takesTemperature = effect.Property is TargetProperty.SolidContent or TargetProperty.Viscosity or TargetProperty.Density;
        if (isTarget && takesTemperature != effect.Temperature is not null)
        {
            faults.Add(place, "solid-content, viscosity and density have a temperature, and no other property has one");
        }
    }

    private static void CheckAcid(NeedEffect effect, LoadedSeed seed, Place place, FaultList faults)
    {
        if ((effect.Property == TargetProperty.FattyAcid) != effect.Acid is not null)
        {
            faults.Add(place, "a target of fatty-acid names its acid, and no other does");
        }
        else if (effect.Acid is { } acid && seed.HasFattyAcids && seed.FattyAcids.All(a => a.Value.Symbol != acid))
        {
            faults.Add(place, $"acid \"{acid}\" is not in {FattyAcidTable.Path}; correct the symbol");
        }
    }

    private static void CheckScope(NeedEffect effect, LoadedSeed seed, Place place, FaultList faults)
    {
        var wantsScope = effect.Kind is NeedEffectKind.Prefer or NeedEffectKind.Avoid or NeedEffectKind.Exclude;
        if (wantsScope != effect.Scope is not null)
        {
            faults.Add(place, "scope belongs to prefer, avoid and exclude, which need it");
        }
        else if (effect.Scope is { } text)
        {
            if (!IngredientScope.TryParse(text, out var scope))
            {
                faults.Add(place, $"scope \"{text}\" is none of the forms {IngredientScope.Forms}");
            }
            else if (seed.IsComplete && !seed.Ingredients.Any(i => scope!.Holds(i.Value)))
            {
                faults.Add(place, $"scope \"{text}\" holds no ingredient of the catalogue; correct it or leave the row out");
            }
        }
    }
}
