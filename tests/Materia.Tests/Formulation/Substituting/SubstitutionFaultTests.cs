using Materia.Formulation.Substituting;

namespace Materia.Tests.Formulation.Substituting;

public class SubstitutionFaultTests
{
    private static readonly SubstitutionRequest Fine = Substitutions.Request(Substitutions.Formula(("mango-butter", 30), ("olive-oil", 70)), "mango-butter");

    public static TheoryData<SubstitutionRequest, string, string> Wrong => new()
    {
        { Fine with { Formula = null }, "/formula", "everything in it" },
        { Fine with { Formula = Substitutions.Formula(("mango-butter", 30), ("no-such-oil", 70)) }, "/formula/lines/1/ingredient", "not an ingredient" },
        { Fine with { Without = [] }, "/without", "Name 1 to" },
        { Fine with { Without = ["shea-butter"] }, "/without/0", "not in the formula" },
        { Fine with { Without = ["mango-butter", "mango-butter"] }, "/without/1", "twice" },
        { Fine with { Pantry = [] }, "/pantry", "empty" },
        { Fine with { Pantry = [new() { Ingredient = "mango-butter" }] }, "/pantry/0", "done without" },
        { Fine with { Locked = [new(7, null)] }, "/locked/0", "no line 7" },
        { Fine with { Locked = [new(null, "mango-butter")] }, "/locked/0", "done without" },
        { Fine with { Formula = Substitutions.Formula(("mango-butter", 30), ("olive-oil", 70), ("shea-butter", 60)), Locked = [new(1, null), new(2, null)] }, "/locked", "add up to 130" },
        { Fine with { Pantry = [new() { Ingredient = "kokum-butter" }], Exclude = new() { Scopes = ["ingredient:kokum-butter"] } }, "/exclude", "leave nothing" },
        { Fine with { Exclude = new() { Scopes = ["ingredient:no-such-oil"] } }, "/exclude/scopes/0", "not an ingredient" },
        { Fine with { Exclude = new() { Scopes = ["palm"] } }, "/exclude/scopes/0", "names no set" },
        { Fine with { Exclude = new() { Scopes = ["kind:wax", "group:no-such-group"] } }, "/exclude/scopes/1", "not a substitution group" },
        { Fine with { Exclude = new() { Scopes = ["function:no-such-function"] } }, "/exclude/scopes/0", "No ingredient has the function" },
        { Fine with { Exclude = new() { MaxComedogenic = 6 } }, "/exclude/maxComedogenic", "from 0 to 5" },
        { Fine with { Limit = 0 }, "/limit", "from 1 to 10" },
        { Fine with { TimeBudget = 11 }, "/timeBudget", "up to 10" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Find_WrongRequest_NamesThePlaceAndWhatToDo(SubstitutionRequest request, string place, string words) =>
        Substitutions.Faults(request).ShouldContain(f => f.Pointer == place && f.Message.Contains(words, StringComparison.Ordinal));
}
