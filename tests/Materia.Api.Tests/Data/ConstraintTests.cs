using System.Data.Common;
using Materia.Api.Tests.Databases;
using Materia.Catalogue;
using Materia.Data;

namespace Materia.Api.Tests.Data;

/// <summary>What the database itself refuses, whatever the code before it checks.</summary>
public abstract class ConstraintTests(TestDatabase database) : ReleaseTests(database)
{
    /// <summary>An order that breaks a rule of the release that is there, and a part of the name that the engine gives the rule.</summary>
    public static TheoryData<string, string> BrokenRules() => new()
    {
        { "UPDATE property_figure SET source = NULL", "source" },
        { "UPDATE property_figure SET source = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE property_figure SET check_in = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE property_figure SET evidence = 'certain'", "ck_property_figure_evidence_is_known" },
        { "UPDATE property_figure SET locator = NULL", "ck_property_figure_published_has_locator" },
        { "UPDATE property_figure SET locator = '  '", "ck_property_figure_published_has_locator" },
        { "UPDATE property_figure SET low = NULL, typical = NULL, high = NULL", "ck_property_figure_has_a_value" },

        // As texts 9 > 10 and 100 < 20: the comparison has to be one of numbers.
        { "UPDATE property_figure SET low = '10', typical = '9', high = NULL", "ck_property_figure_range_in_order" },
        { "UPDATE property_figure SET low = '100', typical = NULL, high = '20'", "ck_property_figure_range_in_order" },
        { "UPDATE property_figure SET typical = '100.1' WHERE unit = '%'", "ck_property_figure_percent_in_range" },
        { "UPDATE fatty_acid_share SET high = '100.5', typical = NULL, low = NULL", "ck_fatty_acid_share_percent_in_range" },
        { "UPDATE fatty_acid_share SET high = NULL, typical = NULL, low = NULL", "ck_fatty_acid_share_has_a_value" },
        { "UPDATE fatty_acid_share SET acid = '99:9'", "FOREIGN KEY" },
        { "UPDATE triacylglycerol_share SET species = ' ' WHERE species = 'LaMP'", "ck_triacylglycerol_share_species_not_blank" },
        { "UPDATE triacylglycerol_share SET species = 'SOS'", "UNIQUE" },
        { "UPDATE triacylglycerol_share SET low = '10', typical = '9', high = NULL", "ck_triacylglycerol_share_range_in_order" },
        { "UPDATE triacylglycerol_share SET high = '100.5', typical = NULL, low = NULL", "ck_triacylglycerol_share_percent_in_range" },
        { "UPDATE triacylglycerol_share SET high = NULL, typical = NULL, low = NULL", "ck_triacylglycerol_share_has_a_value" },
        { "UPDATE triacylglycerol_share SET profile = 2 WHERE species = 'LaMP'", "FOREIGN KEY" },
        { "UPDATE triacylglycerol_share SET source = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE triacylglycerol_profile SET used = (0 = 0)", "UNIQUE" },
        { "UPDATE triacylglycerol_profile SET label = ' '", "ck_triacylglycerol_profile_label_not_blank" },
        { "UPDATE constituent SET low = '-1' WHERE low IS NOT NULL", "ck_constituent_percent_in_range" },
        { "UPDATE constituent SET cas = '78-70-5' WHERE cas IS NOT NULL", "ck_constituent_cas_is_valid" },
        { "UPDATE fatty_acid SET cas = '112-80-2' WHERE cas IS NOT NULL", "ck_fatty_acid_cas_is_valid" },
        { "UPDATE registry_number SET number = '61789-91-2' WHERE registry = 'cas'", "ck_registry_number_cas_is_valid" },
        { "UPDATE registry_number SET number = '61789911' WHERE registry = 'cas'", "ck_registry_number_cas_is_valid" },
        { "UPDATE registry_number SET number = '232-293-7' WHERE registry = 'ec'", "ck_registry_number_ec_is_valid" },
        { "UPDATE ingredient_description SET text = ' '", "ck_ingredient_description_text_not_blank" },
        { "UPDATE ingredient_description SET source = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE ingredient_charge SET charge = 'none'", "ck_ingredient_charge_charge_is_known" },
        { "UPDATE composite_part SET low = '100', typical = NULL, high = '20'", "ck_composite_part_range_in_order" },
        { "UPDATE composite_part SET high = '100.5', typical = NULL, low = NULL", "ck_composite_part_percent_in_range" },
        { "UPDATE composite_part SET cas = '56-81-6'", "ck_composite_part_cas_is_valid" },
        { "UPDATE composite_part SET part_ingredient = ingredient", "ck_composite_part_part_is_another_ingredient" },
        { "UPDATE composite_part SET part_ingredient = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE composite_part SET inci_name = 'Cera Ficta'", "UNIQUE" },
        { "UPDATE composite_part SET inci_name = ' ' WHERE cas IS NULL", "ck_composite_part_inci_name_not_blank" },
        { "UPDATE usage_level SET product_use = 'nowhere' WHERE ordinal = 0", "FOREIGN KEY" },
        { "UPDATE usage_level SET product_use = 'sample-mask'", "UNIQUE" },
        { "UPDATE usage_level SET low = NULL, typical = NULL, high = NULL", "ck_usage_level_has_a_value" },
        { "UPDATE usage_level SET low = '10', typical = '9', high = NULL", "ck_usage_level_range_in_order" },
        { "UPDATE usage_level SET high = '100.5', typical = NULL, low = NULL", "ck_usage_level_percent_in_range" },
        { "UPDATE handling_note SET topic = 'mood'", "ck_handling_note_topic_is_known" },
        { "UPDATE handling_note SET phase = 'gas' WHERE topic = 'phase'", "ck_handling_note_phase_is_known" },
        { "UPDATE handling_note SET phase = NULL", "ck_handling_note_phase_goes_with_its_topic" },
        { "UPDATE handling_note SET phase = 'melt'", "ck_handling_note_phase_goes_with_its_topic" },
        { "UPDATE handling_note SET topic = 'phase', phase = 'melt'", "UNIQUE" },
        { "UPDATE handling_note SET text = ''", "ck_handling_note_text_not_blank" },
        { "UPDATE substitution_membership SET substitution_group = 'nowhere'", "FOREIGN KEY" },
        { "UPDATE substitution_membership SET is_reference = (0 = 0), swap_ratio = NULL", "UNIQUE" },
        { "UPDATE substitution_membership SET ingredient = 'sample-butter', ordinal = 7 WHERE ordinal = 0 AND swap_ratio IS NOT NULL", "UNIQUE" },
        { "UPDATE substitution_membership SET swap_ratio = '0' WHERE swap_ratio IS NOT NULL", "ck_substitution_membership_swap_ratio_is_positive" },
        { "UPDATE substitution_membership SET swap_ratio = '1.5' WHERE is_reference", "ck_substitution_membership_reference_replaces_itself" },
        { "UPDATE substitution_membership SET text = ' '", "ck_substitution_membership_text_not_blank" },
        { "UPDATE body_note SET subject = 'beard'", "ck_body_note_subject_is_known" },
        { "UPDATE body_note SET text = ' '", "ck_body_note_text_not_blank" },
        { "UPDATE substitution_group SET id = 'Sample Group'", "ck_substitution_group_id_is_kebab_case" },
        { "UPDATE substitution_group SET name = ' '", "ck_substitution_group_name_not_blank" },
        { "UPDATE substitution_group SET description = ' '", "ck_substitution_group_description_not_blank" },
        { "DELETE FROM substitution_group", "FOREIGN KEY" },
        { "DELETE FROM product_use", "FOREIGN KEY" },
        { "UPDATE comedogenic_note SET high = 7", "ck_comedogenic_note_grades_in_range" },
        { "UPDATE comedogenic_note SET low = 3", "ck_comedogenic_note_grades_in_range" },
        { "UPDATE comedogenic_note SET irritancy = 6", "ck_comedogenic_note_irritancy_in_range" },
        { "UPDATE ingredient_name SET kind = 'common' WHERE kind = 'inci'", "UNIQUE" },
        { "UPDATE fatty_acid_profile SET used = (0 = 0), part = 'acids'", "UNIQUE" },
        { "UPDATE ingredient SET id = 'Sample Butter' WHERE id = 'a-wax-out-of-order'", "ck_ingredient_id_is_kebab_case" },
        { "UPDATE source SET kind = 'rumour'", "ck_source_kind_is_known" },
        { "UPDATE release SET origin = 'elsewhere'", "ck_release_origin_is_known" },
        { "DELETE FROM source WHERE id = 'sample-table'", "FOREIGN KEY" },
    };

    [Theory]
    [MemberData(nameof(BrokenRules))]
    public async Task Database_OrderThatBreaksARule_RefusesItAndKeepsWhatItHad(string sql, string rule)
    {
        await PublishAsync(SampleContent.Create());

        var fault = await Should.ThrowAsync<DbException>(() => Raw.ExecuteAsync(Database, sql));

        fault.Message.ShouldContain(rule, Case.Insensitive);
        Json((await ReadCurrentAsync()).Content).ShouldBe(Json(SampleContent.Create()));
    }

    [Fact]
    public async Task PublishAsync_AStatementThatTheDatabaseRefuses_LeavesNothingOfTheRelease()
    {
        await PublishAsync(SampleContent.Create());
        var content = SampleContent.Create();
        var butter = content.Ingredients[0];

        // Cautions are the last table that is written.
        var broken = content with { Ingredients = [butter with { Cautions = [butter.Cautions[0] with { Source = "nowhere" }] }, content.Ingredients[1]] };
        await using var context = Database.CreateContext();
        var store = new ReleaseStore(context);

        await Should.ThrowAsync<DbException>(() => store.PublishAsync(broken, ReleaseOrigin.Seed, Now, Cancellation));

        (await HeadersAsync()).Select(h => h.Number).ShouldBe([1]);
        foreach (var table in Raw.ContentTables)
        {
            (await Raw.CountAsync(Database, $"SELECT count(*) FROM {table} WHERE release <> 1")).ShouldBe(0, table);
        }

        // The store goes on: the number that failed is given to the next that does not.
        (await store.PublishAsync(SampleContent.Other(), ReleaseOrigin.Seed, Now, Cancellation)).Number.ShouldBe(2);
    }

    [Fact]
    public async Task PublishAsync_TwoIngredientsWithOneId_AreRefused()
    {
        var content = SampleContent.Create();

        await Should.ThrowAsync<DbException>(() => PublishAsync(content with { Ingredients = [SampleIngredients.Wax(), SampleIngredients.Wax()] }));

        (await HeadersAsync()).ShouldBeEmpty();
    }

    /// <summary>Numbers whose check digit holds, ones with each digit changed, and ones of a wrong form.</summary>
    [Fact]
    public async Task Database_NumbersOfARegistry_AreJudgedAsInTheCode()
    {
        await PublishAsync(SampleContent.Create());

        // The shortest form, two in use, and the longest form: 9*1 + 8*2 + 7*3 + 6*4 + 5*5 + 4*6 + 3*7 + 2*8 + 1*9 = 165.
        await AgreesAsync("cas", Variants("50-00-0", "112-80-1", "61789-91-1", "1234567-89-5"), CasNumber.IsValid);
        await AgreesAsync("ec", Variants("232-293-8"), EcNumber.IsValid);
    }

    private static IEnumerable<string> Variants(params string[] numbers) => numbers
        .SelectMany(n => Enumerable.Range(0, n.Length).Select(i => n[..i] + (n[i] == '9' ? '0' : (char)(n[i] + 1)) + n[(i + 1)..]))
        .Concat(numbers)
        .Concat(["", "-", "0-00-0", "7-70-6", "078-70-6", "12345678-70-6", "78-706", "7870-6", "78-70-6 ", " 78-70-6", "7a-70-6", "1-3-45-67-8", "232293-8", "232-2938"]);

    private async Task AgreesAsync(string registry, IEnumerable<string> numbers, Func<string, bool> rule)
    {
        foreach (var number in numbers)
        {
            var order = $"UPDATE registry_number SET number = '{number}' WHERE registry = '{registry}'";
            if (rule(number))
            {
                (await Raw.ExecuteAsync(Database, order)).ShouldBe(1, number);
            }
            else
            {
                await Should.ThrowAsync<DbException>(() => Raw.ExecuteAsync(Database, order), number);
            }
        }
    }
}

public sealed class PostgreSqlConstraintTests(PostgreSqlDatabase database) : ConstraintTests(database), IClassFixture<PostgreSqlDatabase>;

public sealed class SqliteConstraintTests(SqliteFile database) : ConstraintTests(database), IClassFixture<SqliteFile>;
