using Materia.Api.Tests.Hosting;

namespace Materia.Api.Tests.Documents;

/// <summary>The examples of the README and of docs/questions.md give the answers shown there.</summary>
[Collection(nameof(SqliteApi))]
public sealed class ReadmeTests(SqliteApi api)
{
    [Fact]
    public async Task EveryExample_GivesTheAnswerShown() =>
        (await ShownExamples.ShouldHoldAsync(Repository.File("README.md"), api.Client)).ShouldBe(4, "a search, a record, an evaluation and a substitution");

    [Fact]
    public async Task EveryQuestionByProperty_GivesTheAnswerShown() =>
        (await ShownExamples.ShouldHoldAsync(Repository.File("docs/questions.md"), api.Client)).ShouldBe(9, "six questions, three of which take two calls");
}
