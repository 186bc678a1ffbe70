using System;
using Materia.Data.Engines;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.PostgreSql
{
    /// <inheritdoc />
    public partial class CatalogueTables : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql(PostgreSqlFunctions.CreateCasIsValid);
            migrationBuilder.Sql(PostgreSqlFunctions.CreateEcIsValid);

            migrationBuilder.CreateTable(
                name: "release",
                columns: table => new
                {
                    number = table.Column<int>(type: "integer", nullable: false),
                    published = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    checksum = table.Column<string>(type: "text", nullable: false),
                    origin = table.Column<string>(type: "text", nullable: false),
                    ingredient_count = table.Column<int>(type: "integer", nullable: false),
                    statement_count = table.Column<int>(type: "integer", nullable: false),
                    source_count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_release", x => x.number);
                    table.CheckConstraint("ck_release_checksum_is_sha256", "checksum ~ '^[0-9a-f]{64}$'");
                    table.CheckConstraint("ck_release_counts_are_not_negative", "ingredient_count >= 0 AND statement_count >= 0 AND source_count >= 0");
                    table.CheckConstraint("ck_release_number_is_positive", "number > 0");
                    table.CheckConstraint("ck_release_origin_is_known", "origin IN ('seed', 'curation')");
                });

            migrationBuilder.CreateTable(
                name: "ingredient",
                columns: table => new
                {
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient", x => new { x.release, x.id });
                    table.CheckConstraint("ck_ingredient_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
                    table.CheckConstraint("ck_ingredient_kind_is_kebab_case", "kind ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    authors = table.Column<string>(type: "text", nullable: true),
                    title = table.Column<string>(type: "text", nullable: false),
                    year = table.Column<int>(type: "integer", nullable: true),
                    locator = table.Column<string>(type: "text", nullable: true),
                    licence = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_source", x => new { x.release, x.id });
                    table.CheckConstraint("ck_source_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    label = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    part = table.Column<string>(type: "text", nullable: false),
                    used = table.Column<bool>(type: "boolean", nullable: false)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_former_id", x => new { x.release, x.id });
                    table.CheckConstraint("ck_former_id_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    text = table.Column<string>(type: "text", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    low = table.Column<int>(type: "integer", nullable: false),
                    high = table.Column<int>(type: "integer", nullable: false),
                    irritancy = table.Column<int>(type: "integer", nullable: true),
                    tested = table.Column<string>(type: "text", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    substance = table.Column<string>(type: "text", nullable: false),
                    cas = table.Column<string>(type: "text", nullable: true),
                    low = table.Column<decimal>(type: "numeric", nullable: true),
                    typical = table.Column<decimal>(type: "numeric", nullable: true),
                    high = table.Column<decimal>(type: "numeric", nullable: true),
                    used = table.Column<bool>(type: "boolean", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_constituent", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_constituent_cas_is_valid", "cas_is_valid(cas)");
                    table.CheckConstraint("ck_constituent_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_constituent_percent_in_range", "low BETWEEN 0 AND 100 AND typical BETWEEN 0 AND 100 AND high BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_constituent_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_constituent_range_in_order", "low <= high AND low <= typical AND typical <= high");
                    table.CheckConstraint("ck_constituent_substance_not_blank", "trim(substance) <> ''");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    symbol = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    systematic_name = table.Column<string>(type: "text", nullable: true),
                    cas = table.Column<string>(type: "text", nullable: true),
                    carbons = table.Column<int>(type: "integer", nullable: false),
                    double_bonds = table.Column<int>(type: "integer", nullable: false),
                    hydroxyls = table.Column<int>(type: "integer", nullable: false),
                    alcohol = table.Column<bool>(type: "boolean", nullable: false),
                    molar_mass = table.Column<decimal>(type: "numeric", nullable: false),
                    melting_point = table.Column<decimal>(type: "numeric", nullable: true),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_fatty_acid", x => new { x.release, x.symbol });
                    table.CheckConstraint("ck_fatty_acid_cas_is_valid", "cas_is_valid(cas)");
                    table.CheckConstraint("ck_fatty_acid_counts_in_range", "carbons > 0 AND double_bonds BETWEEN 0 AND carbons AND hydroxyls >= 0");
                    table.CheckConstraint("ck_fatty_acid_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_fatty_acid_molar_mass_is_positive", "molar_mass > 0");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    function = table.Column<string>(type: "text", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ingredient_function", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_ingredient_function_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_ingredient_function_function_is_kebab_case", "function ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    text = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    language = table.Column<string>(type: "text", nullable: true),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    kingdom = table.Column<string>(type: "text", nullable: false),
                    species = table.Column<string>(type: "text", nullable: true),
                    part = table.Column<string>(type: "text", nullable: true),
                    extraction = table.Column<string>(type: "text", nullable: true),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    exposure = table.Column<string>(type: "text", nullable: false),
                    site = table.Column<string>(type: "text", nullable: false),
                    description = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_product_use", x => new { x.release, x.id });
                    table.CheckConstraint("ck_product_use_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_product_use_exposure_is_known", "exposure IN ('leave-on', 'rinse-off')");
                    table.CheckConstraint("ck_product_use_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    property = table.Column<string>(type: "text", nullable: false),
                    low = table.Column<decimal>(type: "numeric", nullable: true),
                    typical = table.Column<decimal>(type: "numeric", nullable: true),
                    high = table.Column<decimal>(type: "numeric", nullable: true),
                    unit = table.Column<string>(type: "text", nullable: false),
                    temperature = table.Column<decimal>(type: "numeric", nullable: true),
                    water_temperature = table.Column<decimal>(type: "numeric", nullable: true),
                    used = table.Column<bool>(type: "boolean", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_property_figure", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_property_figure_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_property_figure_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_property_figure_percent_in_range", "unit <> '%' OR (low BETWEEN 0 AND 100 AND typical BETWEEN 0 AND 100 AND high BETWEEN 0 AND 100)");
                    table.CheckConstraint("ck_property_figure_property_is_kebab_case", "property ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
                    table.CheckConstraint("ck_property_figure_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_property_figure_range_in_order", "low <= high AND low <= typical AND typical <= high");
                    table.CheckConstraint("ck_property_figure_unit_not_blank", "trim(unit) <> ''");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    registry = table.Column<string>(type: "text", nullable: false),
                    number = table.Column<string>(type: "text", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_registry_number", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_registry_number_cas_is_valid", "registry <> 'cas' OR (cas_is_valid(number))");
                    table.CheckConstraint("ck_registry_number_ec_is_valid", "registry <> 'ec' OR (ec_is_valid(number))");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    profile = table.Column<int>(type: "integer", nullable: false),
                    acid = table.Column<string>(type: "text", nullable: false),
                    low = table.Column<decimal>(type: "numeric", nullable: true),
                    typical = table.Column<decimal>(type: "numeric", nullable: true),
                    high = table.Column<decimal>(type: "numeric", nullable: true),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_fatty_acid_share", x => new { x.release, x.ingredient, x.profile, x.ordinal });
                    table.CheckConstraint("ck_fatty_acid_share_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_fatty_acid_share_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_fatty_acid_share_percent_in_range", "low BETWEEN 0 AND 100 AND typical BETWEEN 0 AND 100 AND high BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_fatty_acid_share_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_fatty_acid_share_range_in_order", "low <= high AND low <= typical AND typical <= high");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    family = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
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

            migrationBuilder.Sql(PostgreSqlFunctions.Drop);
        }
    }
}
