using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Needs : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "need",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    subject = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    opposes = table.Column<string>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_need", x => new { x.release, x.id });
                    table.CheckConstraint("ck_need_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_need_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_need_name_not_blank", "trim(name) <> ''");
                    table.CheckConstraint("ck_need_opposes_another", "opposes <> id");
                    table.CheckConstraint("ck_need_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_need_subject_is_known", "subject IN ('strands', 'scalp', 'skin', 'choice', 'climate', 'person')");
                    table.CheckConstraint("ck_need_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_need_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_need_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_need_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "need_effect",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    need = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    aimed_property = table.Column<string>(type: "TEXT", nullable: true),
                    temperature = table.Column<string>(type: "TEXT", nullable: true),
                    acid = table.Column<string>(type: "TEXT", nullable: true),
                    low = table.Column<string>(type: "TEXT", nullable: true),
                    high = table.Column<string>(type: "TEXT", nullable: true),
                    weight = table.Column<string>(type: "TEXT", nullable: true),
                    scope = table.Column<string>(type: "TEXT", nullable: true),
                    reason = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_need_effect", x => new { x.release, x.need, x.ordinal });
                    table.CheckConstraint("ck_need_effect_acid_of_fatty_acid", "(acid IS NOT NULL) = (aimed_property IS NOT NULL AND aimed_property = 'fatty-acid')");
                    table.CheckConstraint("ck_need_effect_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_need_effect_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_need_effect_kind_is_known", "kind IN ('target', 'prefer', 'avoid', 'exclude', 'caution')");
                    table.CheckConstraint("ck_need_effect_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_need_effect_property_is_known", "aimed_property IN ('solid-content', 'clear-point', 'viscosity', 'iodine-value', 'saponification-value', 'density', 'oxidisability', 'fatty-acid', 'saturated', 'monounsaturated', 'polyunsaturated', 'required-hlb', 'comedogenic')");
                    table.CheckConstraint("ck_need_effect_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_need_effect_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_need_effect_reason_not_blank", "trim(reason) <> ''");
                    table.CheckConstraint("ck_need_effect_scope_where_needed", "(scope IS NOT NULL) = (kind IN ('prefer', 'avoid', 'exclude'))");
                    table.CheckConstraint("ck_need_effect_target_has_property", "(kind = 'target') = (aimed_property IS NOT NULL)");
                    table.CheckConstraint("ck_need_effect_target_has_range", "(kind = 'target') = (low IS NOT NULL OR high IS NOT NULL)");
                    table.CheckConstraint("ck_need_effect_target_has_weight", "(kind = 'target') = (weight IS NOT NULL)");
                    table.CheckConstraint("ck_need_effect_temperature_is_decimal", "ltrim(temperature, '-') GLOB '[0-9]*' AND temperature GLOB '*[0-9]' AND ltrim(temperature, '-') NOT GLOB '*[^0-9.]*' AND length(temperature) - length(ltrim(temperature, '-')) <= 1 AND length(temperature) - length(replace(temperature, '.', '')) <= 1");
                    table.CheckConstraint("ck_need_effect_weight_in_range", "CAST(weight AS REAL) BETWEEN 0 AND 10");
                    table.CheckConstraint("ck_need_effect_weight_is_decimal", "ltrim(weight, '-') GLOB '[0-9]*' AND weight GLOB '*[0-9]' AND ltrim(weight, '-') NOT GLOB '*[^0-9.]*' AND length(weight) - length(ltrim(weight, '-')) <= 1 AND length(weight) - length(replace(weight, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_need_effect_fatty_acid_acid",
                        columns: x => new { x.release, x.acid },
                        principalTable: "fatty_acid",
                        principalColumns: new[] { "release", "symbol" });
                    table.ForeignKey(
                        name: "fk_need_effect_need_need",
                        columns: x => new { x.release, x.need },
                        principalTable: "need",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_need_effect_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_need_effect_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_need_effect_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "need_effect");

            migrationBuilder.DropTable(
                name: "need");
        }
    }
}
