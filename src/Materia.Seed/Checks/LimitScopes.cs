using Materia.Catalogue.Regulated;
using Materia.Seed.Reading;

namespace Materia.Seed.Checks;

/// <summary>
/// The scopes of limits: each binds a type of product, and no two with a share bind the same one for the same substance, authority
/// and kind, since one entry gives one share for one product.
/// </summary>
internal static class LimitScopes
{
    public static void Check(LoadedSeed seed, FaultList faults)
    {
        // A row of a product type that could not be read may be the one that is bound.
        if (!seed.HasUses)
        {
            return;
        }

        var taken = new Dictionary<(string, Authority, LimitKind, string), Placed<Limit>>();
        foreach (var placed in seed.Regulation.Limits.Rows)
        {
            var (limit, place) = placed;
            var bound = seed.Uses.Select(u => u.Value).Where(limit.Scope.Binds).ToList();
            if (bound.Count == 0)
            {
                faults.Add(place, $"{limit.Id} binds no type of product; correct its scope or leave the row out and say so in a note");
            }

            foreach (var use in limit.MaxPercent is null ? [] : bound)
            {
                if (!taken.TryAdd((limit.Substance, limit.Authority, limit.Kind, use.Id), placed))
                {
                    var other = taken[(limit.Substance, limit.Authority, limit.Kind, use.Id)];
                    faults.Add(place, $"{limit.Id} binds {use.Id} and so does {other.Value.Id} in line {other.Place.Line}; part their scopes");
                    break;
                }
            }
        }
    }
}
