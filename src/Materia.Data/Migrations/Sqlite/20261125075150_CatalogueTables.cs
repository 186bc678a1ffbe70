using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class CatalogueTables : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "release",
                columns: table => new
                {
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    published = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    checksum = table.Column<string>(type: "TEXT", nullable: false),
                    origin = table.Column<string>(type: "TEXT", nullable: false),
                    ingredient_count = table.Column<int>(type: "INTEGER", nullable: false),
                    statement_count = table.Column<int>(type: "INTEGER", nullable: false),
                    source_count = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_release", x => x.number);
                    table.CheckConstraint("ck_release_checksum_is_sha256", "length(checksum) = 64 AND checksum NOT GLOB '*[^0-9a-f]*'");
                    table.CheckConstraint("ck_release_counts_are_not_negative", "ingredient_count >= 0 AND statement_count >= 0 AND source_count >= 0");
                    table.CheckConstraint("ck_release_number_is_positive", "number > 0");
                    table.CheckConstraint("ck_release_origin_is_known", "origin IN ('seed', 'curation')");
                });

            migrationBuilder.CreateTable(
                name: "ingredient",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient", x => new { x.release, x.id });
                    table.CheckConstraint("ck_ingredient_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_ingredient_kind_is_kebab_case", "kind GLOB '[a-z0-9]*' AND kind GLOB '*[a-z0-9]' AND kind NOT GLOB '*[^a-z0-9-]*' AND kind NOT GLOB '*--*'");
                    table.ForeignKey(
                        name: "fk_ingredient_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "source",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    authors = table.Column<string>(type: "TEXT", nullable: true),
                    title = table.Column<string>(type: "TEXT", nullable: false),
                    year = table.Column<int>(type: "INTEGER", nullable: true),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    licence = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_source", x => new { x.release, x.id });
                    table.CheckConstraint("ck_source_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_source_kind_is_known", "kind IN ('paper', 'book', 'standard', 'law', 'dataset', 'report', 'supplier', 'web-page', 'trade-practice', 'recollection')");
                    table.CheckConstraint("ck_source_title_not_blank", "trim(title) <> ''");
                    table.ForeignKey(
                        name: "fk_source_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "fatty_acid_profile",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    label = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    part = table.Column<string>(type: "TEXT", nullable: false),
                    used = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_fatty_acid_profile", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_fatty_acid_profile_kind_is_known", "kind IN ('sample', 'range')");
                    table.CheckConstraint("ck_fatty_acid_profile_label_not_blank", "trim(label) <> ''");
                    table.CheckConstraint("ck_fatty_acid_profile_part_is_known", "part IN ('acids', 'alcohols')");
                    table.ForeignKey(
                        name: "fk_fatty_acid_profile_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_fatty_acid_profile_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "former_id",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_former_id", x => new { x.release, x.id });
                    table.CheckConstraint("ck_former_id_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_former_id_id_is_not_the_present_one", "id <> ingredient");
                    table.ForeignKey(
                        name: "fk_former_id_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_former_id_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "caution",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_caution", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_caution_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_caution_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_caution_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_caution_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_caution_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_caution_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_caution_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "comedogenic_note",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    low = table.Column<int>(type: "INTEGER", nullable: false),
                    high = table.Column<int>(type: "INTEGER", nullable: false),
                    irritancy = table.Column<int>(type: "INTEGER", nullable: true),
                    tested = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_comedogenic_note", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_comedogenic_note_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_comedogenic_note_grades_in_range", "low >= 0 AND low <= high AND high <= 5");
                    table.CheckConstraint("ck_comedogenic_note_irritancy_in_range", "irritancy BETWEEN 0 AND 5");
                    table.CheckConstraint("ck_comedogenic_note_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_comedogenic_note_tested_not_blank", "trim(tested) <> ''");
                    table.ForeignKey(
                        name: "fk_comedogenic_note_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_comedogenic_note_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_comedogenic_note_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_comedogenic_note_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "constituent",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    substance = table.Column<string>(type: "TEXT", nullable: false),
                    cas = table.Column<string>(type: "TEXT", nullable: true),
                    low = table.Column<string>(type: "TEXT", nullable: true),
                    typical = table.Column<string>(type: "TEXT", nullable: true),
                    high = table.Column<string>(type: "TEXT", nullable: true),
                    used = table.Column<bool>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_constituent", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_constituent_cas_is_valid", "length(cas) BETWEEN 7 AND 12 AND cas GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(cas, '-', '')) = length(cas) - 2 AND replace(cas, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(cas, '-', ''), -2, 1) + 2 * substr(replace(cas, '-', ''), -3, 1) + 3 * substr(replace(cas, '-', ''), -4, 1) + 4 * substr(replace(cas, '-', ''), -5, 1) + 5 * substr(replace(cas, '-', ''), -6, 1) + 6 * substr(replace(cas, '-', ''), -7, 1) + 7 * substr(replace(cas, '-', ''), -8, 1) + 8 * substr(replace(cas, '-', ''), -9, 1) + 9 * substr(replace(cas, '-', ''), -10, 1)) % 10 = CAST(substr(cas, -1) AS INTEGER)");
                    table.CheckConstraint("ck_constituent_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_constituent_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_constituent_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_constituent_percent_in_range", "CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_constituent_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_constituent_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_constituent_substance_not_blank", "trim(substance) <> ''");
                    table.CheckConstraint("ck_constituent_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_constituent_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_constituent_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_constituent_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_constituent_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "fatty_acid",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    symbol = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    systematic_name = table.Column<string>(type: "TEXT", nullable: true),
                    cas = table.Column<string>(type: "TEXT", nullable: true),
                    carbons = table.Column<int>(type: "INTEGER", nullable: false),
                    double_bonds = table.Column<int>(type: "INTEGER", nullable: false),
                    hydroxyls = table.Column<int>(type: "INTEGER", nullable: false),
                    alcohol = table.Column<bool>(type: "INTEGER", nullable: false),
                    molar_mass = table.Column<string>(type: "TEXT", nullable: false),
                    melting_point = table.Column<string>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_fatty_acid", x => new { x.release, x.symbol });
                    table.CheckConstraint("ck_fatty_acid_cas_is_valid", "length(cas) BETWEEN 7 AND 12 AND cas GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(cas, '-', '')) = length(cas) - 2 AND replace(cas, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(cas, '-', ''), -2, 1) + 2 * substr(replace(cas, '-', ''), -3, 1) + 3 * substr(replace(cas, '-', ''), -4, 1) + 4 * substr(replace(cas, '-', ''), -5, 1) + 5 * substr(replace(cas, '-', ''), -6, 1) + 6 * substr(replace(cas, '-', ''), -7, 1) + 7 * substr(replace(cas, '-', ''), -8, 1) + 8 * substr(replace(cas, '-', ''), -9, 1) + 9 * substr(replace(cas, '-', ''), -10, 1)) % 10 = CAST(substr(cas, -1) AS INTEGER)");
                    table.CheckConstraint("ck_fatty_acid_counts_in_range", "carbons > 0 AND double_bonds BETWEEN 0 AND carbons AND hydroxyls >= 0");
                    table.CheckConstraint("ck_fatty_acid_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_fatty_acid_melting_point_is_decimal", "ltrim(melting_point, '-') GLOB '[0-9]*' AND melting_point GLOB '*[0-9]' AND ltrim(melting_point, '-') NOT GLOB '*[^0-9.]*' AND length(melting_point) - length(ltrim(melting_point, '-')) <= 1 AND length(melting_point) - length(replace(melting_point, '.', '')) <= 1");
                    table.CheckConstraint("ck_fatty_acid_molar_mass_is_decimal", "ltrim(molar_mass, '-') GLOB '[0-9]*' AND molar_mass GLOB '*[0-9]' AND ltrim(molar_mass, '-') NOT GLOB '*[^0-9.]*' AND length(molar_mass) - length(ltrim(molar_mass, '-')) <= 1 AND length(molar_mass) - length(replace(molar_mass, '.', '')) <= 1");
                    table.CheckConstraint("ck_fatty_acid_molar_mass_is_positive", "CAST(molar_mass AS REAL) > 0");
                    table.CheckConstraint("ck_fatty_acid_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_fatty_acid_symbol_not_blank", "trim(symbol) <> ''");
                    table.ForeignKey(
                        name: "fk_fatty_acid_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_fatty_acid_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_fatty_acid_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "ingredient_function",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    function = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_function", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_ingredient_function_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_function_function_is_kebab_case", "function GLOB '[a-z0-9]*' AND function GLOB '*[a-z0-9]' AND function NOT GLOB '*[^a-z0-9-]*' AND function NOT GLOB '*--*'");
                    table.CheckConstraint("ck_ingredient_function_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.ForeignKey(
                        name: "fk_ingredient_function_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_function_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_function_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_ingredient_function_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "ingredient_name",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    language = table.Column<string>(type: "TEXT", nullable: true),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_name", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_ingredient_name_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_name_kind_is_known", "kind IN ('common', 'inci', 'botanical', 'synonym', 'pharmacopoeia', 'chemical', 'code')");
                    table.CheckConstraint("ck_ingredient_name_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_ingredient_name_text_not_blank", "trim(text) <> ''");
                    table.ForeignKey(
                        name: "fk_ingredient_name_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_name_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_name_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_ingredient_name_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "ingredient_origin",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    kingdom = table.Column<string>(type: "TEXT", nullable: false),
                    species = table.Column<string>(type: "TEXT", nullable: true),
                    part = table.Column<string>(type: "TEXT", nullable: true),
                    extraction = table.Column<string>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_origin", x => new { x.release, x.ingredient });
                    table.CheckConstraint("ck_ingredient_origin_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_origin_kingdom_is_known", "kingdom IN ('plant', 'animal', 'mineral', 'fermentation', 'synthetic')");
                    table.CheckConstraint("ck_ingredient_origin_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.ForeignKey(
                        name: "fk_ingredient_origin_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_origin_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_ingredient_origin_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_ingredient_origin_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "product_use",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    exposure = table.Column<string>(type: "TEXT", nullable: false),
                    site = table.Column<string>(type: "TEXT", nullable: false),
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
                    table.PrimaryKey("pk_product_use", x => new { x.release, x.id });
                    table.CheckConstraint("ck_product_use_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_product_use_exposure_is_known", "exposure IN ('leave-on', 'rinse-off')");
                    table.CheckConstraint("ck_product_use_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_product_use_name_not_blank", "trim(name) <> ''");
                    table.CheckConstraint("ck_product_use_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_product_use_site_is_known", "site IN ('hair', 'face', 'lips', 'body', 'hands', 'feet', 'armpits', 'nails')");
                    table.ForeignKey(
                        name: "fk_product_use_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_product_use_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_product_use_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "property_figure",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    property = table.Column<string>(type: "TEXT", nullable: false),
                    low = table.Column<string>(type: "TEXT", nullable: true),
                    typical = table.Column<string>(type: "TEXT", nullable: true),
                    high = table.Column<string>(type: "TEXT", nullable: true),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    temperature = table.Column<string>(type: "TEXT", nullable: true),
                    water_temperature = table.Column<string>(type: "TEXT", nullable: true),
                    used = table.Column<bool>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_property_figure", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_property_figure_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_property_figure_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_property_figure_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_property_figure_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_property_figure_percent_in_range", "unit <> '%' OR (CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100)");
                    table.CheckConstraint("ck_property_figure_property_is_kebab_case", "property GLOB '[a-z0-9]*' AND property GLOB '*[a-z0-9]' AND property NOT GLOB '*[^a-z0-9-]*' AND property NOT GLOB '*--*'");
                    table.CheckConstraint("ck_property_figure_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_property_figure_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_property_figure_temperature_is_decimal", "ltrim(temperature, '-') GLOB '[0-9]*' AND temperature GLOB '*[0-9]' AND ltrim(temperature, '-') NOT GLOB '*[^0-9.]*' AND length(temperature) - length(ltrim(temperature, '-')) <= 1 AND length(temperature) - length(replace(temperature, '.', '')) <= 1");
                    table.CheckConstraint("ck_property_figure_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.CheckConstraint("ck_property_figure_unit_not_blank", "trim(unit) <> ''");
                    table.CheckConstraint("ck_property_figure_water_temperature_is_decimal", "ltrim(water_temperature, '-') GLOB '[0-9]*' AND water_temperature GLOB '*[0-9]' AND ltrim(water_temperature, '-') NOT GLOB '*[^0-9.]*' AND length(water_temperature) - length(ltrim(water_temperature, '-')) <= 1 AND length(water_temperature) - length(replace(water_temperature, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_property_figure_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_property_figure_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_property_figure_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_property_figure_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "registry_number",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    registry = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<string>(type: "TEXT", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_registry_number", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_registry_number_cas_is_valid", "registry <> 'cas' OR (length(number) BETWEEN 7 AND 12 AND number GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(number, '-', '')) = length(number) - 2 AND replace(number, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(number, '-', ''), -2, 1) + 2 * substr(replace(number, '-', ''), -3, 1) + 3 * substr(replace(number, '-', ''), -4, 1) + 4 * substr(replace(number, '-', ''), -5, 1) + 5 * substr(replace(number, '-', ''), -6, 1) + 6 * substr(replace(number, '-', ''), -7, 1) + 7 * substr(replace(number, '-', ''), -8, 1) + 8 * substr(replace(number, '-', ''), -9, 1) + 9 * substr(replace(number, '-', ''), -10, 1)) % 10 = CAST(substr(number, -1) AS INTEGER))");
                    table.CheckConstraint("ck_registry_number_ec_is_valid", "registry <> 'ec' OR (number GLOB '[0-9][0-9][0-9]-[0-9][0-9][0-9]-[0-9]' AND (1 * substr(replace(number, '-', ''), 1, 1) + 2 * substr(replace(number, '-', ''), 2, 1) + 3 * substr(replace(number, '-', ''), 3, 1) + 4 * substr(replace(number, '-', ''), 4, 1) + 5 * substr(replace(number, '-', ''), 5, 1) + 6 * substr(replace(number, '-', ''), 6, 1)) % 11 = CAST(substr(number, -1) AS INTEGER))");
                    table.CheckConstraint("ck_registry_number_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_registry_number_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_registry_number_registry_is_known", "registry IN ('cas', 'ec')");
                    table.ForeignKey(
                        name: "fk_registry_number_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_registry_number_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_registry_number_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_registry_number_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "fatty_acid_share",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    profile = table.Column<int>(type: "INTEGER", nullable: false),
                    acid = table.Column<string>(type: "TEXT", nullable: false),
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
                    table.PrimaryKey("pk_fatty_acid_share", x => new { x.release, x.ingredient, x.profile, x.ordinal });
                    table.CheckConstraint("ck_fatty_acid_share_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_fatty_acid_share_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_fatty_acid_share_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_fatty_acid_share_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_fatty_acid_share_percent_in_range", "CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_fatty_acid_share_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_fatty_acid_share_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_fatty_acid_share_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_fatty_acid_acid",
                        columns: x => new { x.release, x.acid },
                        principalTable: "fatty_acid",
                        principalColumns: new[] { "release", "symbol" });
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_fatty_acid_profile_profile",
                        columns: x => new { x.release, x.ingredient, x.profile },
                        principalTable: "fatty_acid_profile",
                        principalColumns: new[] { "release", "ingredient", "ordinal" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_fatty_acid_share_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "origin_allergen_family",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    family = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_origin_allergen_family", x => new { x.release, x.ingredient, x.family });
                    table.CheckConstraint("ck_origin_allergen_family_family_is_known", "family IN ('tree-nut', 'peanut', 'soy', 'gluten', 'sesame', 'mustard', 'wool', 'bee', 'latex-related')");
                    table.ForeignKey(
                        name: "fk_origin_allergen_family_ingredient_origin_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient_origin",
                        principalColumns: new[] { "release", "ingredient" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_origin_allergen_family_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_constituent_substance",
                table: "constituent",
                columns: new[] { "release", "ingredient", "substance" },
                unique: true,
                filter: "used");

            migrationBuilder.CreateIndex(
                name: "ix_fatty_acid_profile_part",
                table: "fatty_acid_profile",
                columns: new[] { "release", "ingredient", "part" },
                unique: true,
                filter: "used");

            migrationBuilder.CreateIndex(
                name: "ix_fatty_acid_share_acid",
                table: "fatty_acid_share",
                columns: new[] { "release", "ingredient", "profile", "acid" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_ingredient_name_kind",
                table: "ingredient_name",
                columns: new[] { "release", "ingredient", "kind" },
                unique: true,
                filter: "kind = 'common'");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "caution");

            migrationBuilder.DropTable(
                name: "comedogenic_note");

            migrationBuilder.DropTable(
                name: "constituent");

            migrationBuilder.DropTable(
                name: "fatty_acid_share");

            migrationBuilder.DropTable(
                name: "former_id");

            migrationBuilder.DropTable(
                name: "ingredient_function");

            migrationBuilder.DropTable(
                name: "ingredient_name");

            migrationBuilder.DropTable(
                name: "origin_allergen_family");

            migrationBuilder.DropTable(
                name: "product_use");

            migrationBuilder.DropTable(
                name: "property_figure");

            migrationBuilder.DropTable(
                name: "registry_number");

            migrationBuilder.DropTable(
                name: "fatty_acid");

            migrationBuilder.DropTable(
                name: "fatty_acid_profile");

            migrationBuilder.DropTable(
                name: "ingredient_origin");

            migrationBuilder.DropTable(
                name: "ingredient");

            migrationBuilder.DropTable(
                name: "source");

            migrationBuilder.DropTable(
                name: "release");
        }
    }
}
