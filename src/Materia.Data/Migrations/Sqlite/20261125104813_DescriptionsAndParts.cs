using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class DescriptionsAndParts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "body_note",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    subject = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_body_note", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_body_note_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_body_note_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_body_note_subject_is_known", "subject IN ('hair', 'scalp', 'skin', 'lips', 'nails')");
                    table.CheckConstraint("ck_body_note_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_body_note_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_body_note_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_body_note_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_body_note_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "composite_part",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    inci_name = table.Column<string>(type: "TEXT", nullable: false),
                    part_ingredient = table.Column<string>(type: "TEXT", nullable: true),
                    cas = table.Column<string>(type: "TEXT", nullable: true),
                    low = table.Column<string>(type: "TEXT", nullable: true),
                    typical = table.Column<string>(type: "TEXT", nullable: true),
                    high = table.Column<string>(type: "TEXT", nullable: true),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_composite_part", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_composite_part_cas_is_valid", "length(cas) BETWEEN 7 AND 12 AND cas GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(cas, '-', '')) = length(cas) - 2 AND replace(cas, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(cas, '-', ''), -2, 1) + 2 * substr(replace(cas, '-', ''), -3, 1) + 3 * substr(replace(cas, '-', ''), -4, 1) + 4 * substr(replace(cas, '-', ''), -5, 1) + 5 * substr(replace(cas, '-', ''), -6, 1) + 6 * substr(replace(cas, '-', ''), -7, 1) + 7 * substr(replace(cas, '-', ''), -8, 1) + 8 * substr(replace(cas, '-', ''), -9, 1) + 9 * substr(replace(cas, '-', ''), -10, 1)) % 10 = CAST(substr(cas, -1) AS INTEGER)");
                    table.CheckConstraint("ck_composite_part_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_composite_part_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_composite_part_inci_name_not_blank", "trim(inci_name) <> ''");
                    table.CheckConstraint("ck_composite_part_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_composite_part_part_is_another_ingredient", "part_ingredient <> ingredient");
                    table.CheckConstraint("ck_composite_part_percent_in_range", "CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_composite_part_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_composite_part_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_composite_part_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_composite_part_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_composite_part_ingredient_part_ingredient",
                        columns: x => new { x.release, x.part_ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_composite_part_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_composite_part_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_composite_part_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "handling_note",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    topic = table.Column<string>(type: "TEXT", nullable: false),
                    phase = table.Column<string>(type: "TEXT", nullable: true),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_handling_note", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_handling_note_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_handling_note_phase_goes_with_its_topic", "(topic = 'phase') = (phase IS NOT NULL)");
                    table.CheckConstraint("ck_handling_note_phase_is_known", "phase IN ('melt', 'oil', 'water', 'cool-down', 'powder')");
                    table.CheckConstraint("ck_handling_note_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_handling_note_text_not_blank", "trim(text) <> ''");
                    table.CheckConstraint("ck_handling_note_topic_is_known", "topic IN ('phase', 'dispersing', 'compatibility', 'storage')");
                    table.ForeignKey(
                        name: "fk_handling_note_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_handling_note_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_handling_note_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_handling_note_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "ingredient_charge",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    charge = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_charge", x => new { x.release, x.ingredient });
                    table.CheckConstraint("ck_ingredient_charge_charge_is_known", "charge IN ('nonionic', 'anionic', 'cationic', 'amphoteric')");
                    table.CheckConstraint("ck_ingredient_charge_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_charge_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.ForeignKey(
                        name: "fk_ingredient_charge_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_charge_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_charge_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_ingredient_charge_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "ingredient_description",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_description", x => new { x.release, x.ingredient });
                    table.CheckConstraint("ck_ingredient_description_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_description_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_ingredient_description_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_ingredient_description_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_description_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_description_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_ingredient_description_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "substitution_group",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    description = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_substitution_group", x => new { x.release, x.id });
                    table.CheckConstraint("ck_substitution_group_description_not_blank", "trim(description) <> ''");
                    table.CheckConstraint("ck_substitution_group_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_substitution_group_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_substitution_group_name_not_blank", "trim(name) <> ''");
                    table.CheckConstraint("ck_substitution_group_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.ForeignKey(
                        name: "fk_substitution_group_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_substitution_group_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_substitution_group_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "usage_level",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    product_use = table.Column<string>(type: "TEXT", nullable: false),
                    low = table.Column<string>(type: "TEXT", nullable: true),
                    typical = table.Column<string>(type: "TEXT", nullable: true),
                    high = table.Column<string>(type: "TEXT", nullable: true),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_usage_level", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_usage_level_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_usage_level_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_usage_level_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_usage_level_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_usage_level_percent_in_range", "CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_usage_level_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_usage_level_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_usage_level_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_usage_level_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_usage_level_product_use_product_use",
                        columns: x => new { x.release, x.product_use },
                        principalTable: "product_use",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_usage_level_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_usage_level_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_usage_level_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "substitution_membership",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    substitution_group = table.Column<string>(type: "TEXT", nullable: false),
                    is_reference = table.Column<bool>(type: "INTEGER", nullable: false),
                    swap_ratio = table.Column<string>(type: "TEXT", nullable: true),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_substitution_membership", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_substitution_membership_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_substitution_membership_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_substitution_membership_reference_replaces_itself", "NOT is_reference OR CAST(swap_ratio AS REAL) = 1");
                    table.CheckConstraint("ck_substitution_membership_swap_ratio_is_decimal", "ltrim(swap_ratio, '-') GLOB '[0-9]*' AND swap_ratio GLOB '*[0-9]' AND ltrim(swap_ratio, '-') NOT GLOB '*[^0-9.]*' AND length(swap_ratio) - length(ltrim(swap_ratio, '-')) <= 1 AND length(swap_ratio) - length(replace(swap_ratio, '.', '')) <= 1");
                    table.CheckConstraint("ck_substitution_membership_swap_ratio_is_positive", "CAST(swap_ratio AS REAL) > 0");
                    table.CheckConstraint("ck_substitution_membership_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_substitution_membership_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_substitution_membership_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_substitution_membership_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_substitution_membership_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_substitution_membership_substitution_group_substitution_group",
                        columns: x => new { x.release, x.substitution_group },
                        principalTable: "substitution_group",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateIndex(
                name: "ix_composite_part_inci_name",
                table: "composite_part",
                columns: new[] { "release", "ingredient", "inci_name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_handling_note_topic",
                table: "handling_note",
                columns: new[] { "release", "ingredient", "topic" },
                unique: true,
                filter: "topic = 'phase'");

            migrationBuilder.CreateIndex(
                name: "ix_substitution_membership_ingredient",
                table: "substitution_membership",
                columns: new[] { "release", "substitution_group", "ingredient" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_substitution_membership_substitution_group",
                table: "substitution_membership",
                columns: new[] { "release", "substitution_group" },
                unique: true,
                filter: "is_reference");

            migrationBuilder.CreateIndex(
                name: "ix_usage_level_product_use",
                table: "usage_level",
                columns: new[] { "release", "ingredient", "product_use" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "body_note");

            migrationBuilder.DropTable(
                name: "composite_part");

            migrationBuilder.DropTable(
                name: "handling_note");

            migrationBuilder.DropTable(
                name: "ingredient_charge");

            migrationBuilder.DropTable(
                name: "ingredient_description");

            migrationBuilder.DropTable(
                name: "substitution_membership");

            migrationBuilder.DropTable(
                name: "usage_level");

            migrationBuilder.DropTable(
                name: "substitution_group");
        }
    }
}
