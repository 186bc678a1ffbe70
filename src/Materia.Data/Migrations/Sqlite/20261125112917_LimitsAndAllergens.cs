using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class LimitsAndAllergens : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // Columns with their checks at once: added one by one, the checks would make the provider rebuild the table, which it can do in no transaction.
            migrationBuilder.Sql(
                "ALTER TABLE product_use ADD COLUMN caution TEXT CONSTRAINT ck_product_use_caution_not_blank CHECK (trim(caution) <> '')");

            migrationBuilder.Sql(
                "ALTER TABLE product_use ADD COLUMN ifra_category TEXT CONSTRAINT ck_product_use_ifra_category_is_known " +
                "CHECK (ifra_category IN ('1', '2', '3', '4', '5A', '5B', '5C', '5D', '6', '7A', '7B', '8', '9', '10A', '10B', '11A', '11B', '12'))");

            migrationBuilder.CreateTable(
                name: "allergen",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    declaration_name = table.Column<string>(type: "TEXT", nullable: false),
                    natural_extract = table.Column<bool>(type: "INTEGER", nullable: false),
                    leave_on_threshold = table.Column<string>(type: "TEXT", nullable: false),
                    rinse_off_threshold = table.Column<string>(type: "TEXT", nullable: false),
                    new_products_until = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    old_stock_until = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_allergen", x => new { x.release, x.id });
                    table.CheckConstraint("ck_allergen_dates_in_order", "new_products_until <= old_stock_until");
                    table.CheckConstraint("ck_allergen_dates_together", "(new_products_until IS NULL) = (old_stock_until IS NULL)");
                    table.CheckConstraint("ck_allergen_declaration_name_not_blank", "trim(declaration_name) <> ''");
                    table.CheckConstraint("ck_allergen_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_allergen_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_allergen_leave_on_threshold_is_decimal", "ltrim(leave_on_threshold, '-') GLOB '[0-9]*' AND leave_on_threshold GLOB '*[0-9]' AND ltrim(leave_on_threshold, '-') NOT GLOB '*[^0-9.]*' AND length(leave_on_threshold) - length(ltrim(leave_on_threshold, '-')) <= 1 AND length(leave_on_threshold) - length(replace(leave_on_threshold, '.', '')) <= 1");
                    table.CheckConstraint("ck_allergen_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_allergen_rinse_off_threshold_is_decimal", "ltrim(rinse_off_threshold, '-') GLOB '[0-9]*' AND rinse_off_threshold GLOB '*[0-9]' AND ltrim(rinse_off_threshold, '-') NOT GLOB '*[^0-9.]*' AND length(rinse_off_threshold) - length(ltrim(rinse_off_threshold, '-')) <= 1 AND length(rinse_off_threshold) - length(replace(rinse_off_threshold, '.', '')) <= 1");
                    table.CheckConstraint("ck_allergen_thresholds_in_range", "CAST(leave_on_threshold AS REAL) BETWEEN 0 AND 100 AND CAST(rinse_off_threshold AS REAL) BETWEEN 0 AND 100");
                    table.ForeignKey(
                        name: "fk_allergen_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_allergen_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_allergen_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "regulated_limit",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    substance = table.Column<string>(type: "TEXT", nullable: false),
                    authority = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    exposure = table.Column<string>(type: "TEXT", nullable: true),
                    scope_text = table.Column<string>(type: "TEXT", nullable: false),
                    max_percent = table.Column<string>(type: "TEXT", nullable: true),
                    stays_below = table.Column<bool>(type: "INTEGER", nullable: false),
                    expressed_as = table.Column<string>(type: "TEXT", nullable: true),
                    ratio_group = table.Column<string>(type: "TEXT", nullable: true),
                    conditions = table.Column<string>(type: "TEXT", nullable: true),
                    warning = table.Column<string>(type: "TEXT", nullable: true),
                    warning_above = table.Column<string>(type: "TEXT", nullable: true),
                    applies_from = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    old_stock_until = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    evidence = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    locator = table.Column<string>(type: "TEXT", nullable: true),
                    check_in = table.Column<string>(type: "TEXT", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_regulated_limit", x => new { x.release, x.id });
                    table.CheckConstraint("ck_regulated_limit_authority_is_known", "authority IN ('eu', 'gb', 'us', 'ifra', 'opinion')");
                    table.CheckConstraint("ck_regulated_limit_below_needs_a_share", "NOT stays_below OR max_percent IS NOT NULL");
                    table.CheckConstraint("ck_regulated_limit_dates_in_order", "applies_from <= old_stock_until");
                    table.CheckConstraint("ck_regulated_limit_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_regulated_limit_exposure_is_known", "exposure IN ('leave-on', 'rinse-off')");
                    table.CheckConstraint("ck_regulated_limit_id_is_kebab_case", "id GLOB '[a-z0-9]*' AND id GLOB '*[a-z0-9]' AND id NOT GLOB '*[^a-z0-9-]*' AND id NOT GLOB '*--*'");
                    table.CheckConstraint("ck_regulated_limit_kind_is_known", "kind IN ('prohibited', 'restricted', 'preservative', 'fragrance', 'phototoxic', 'raw-material')");
                    table.CheckConstraint("ck_regulated_limit_max_percent_in_range", "CAST(max_percent AS REAL) > 0 AND CAST(max_percent AS REAL) <= 100");
                    table.CheckConstraint("ck_regulated_limit_max_percent_is_decimal", "ltrim(max_percent, '-') GLOB '[0-9]*' AND max_percent GLOB '*[0-9]' AND ltrim(max_percent, '-') NOT GLOB '*[^0-9.]*' AND length(max_percent) - length(ltrim(max_percent, '-')) <= 1 AND length(max_percent) - length(replace(max_percent, '.', '')) <= 1");
                    table.CheckConstraint("ck_regulated_limit_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_regulated_limit_ratio_needs_a_share", "ratio_group IS NULL OR max_percent IS NOT NULL");
                    table.CheckConstraint("ck_regulated_limit_scope_text_not_blank", "trim(scope_text) <> ''");
                    table.CheckConstraint("ck_regulated_limit_substance_not_blank", "trim(substance) <> ''");
                    table.CheckConstraint("ck_regulated_limit_warning_above_in_range", "CAST(warning_above AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_regulated_limit_warning_above_is_decimal", "ltrim(warning_above, '-') GLOB '[0-9]*' AND warning_above GLOB '*[0-9]' AND ltrim(warning_above, '-') NOT GLOB '*[^0-9.]*' AND length(warning_above) - length(ltrim(warning_above, '-')) <= 1 AND length(warning_above) - length(replace(warning_above, '.', '')) <= 1");
                    table.CheckConstraint("ck_regulated_limit_warning_above_needs_words", "warning_above IS NULL OR warning IS NOT NULL");
                    table.ForeignKey(
                        name: "fk_regulated_limit_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_regulated_limit_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_regulated_limit_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                });

            migrationBuilder.CreateTable(
                name: "allergen_member",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    allergen = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    cas = table.Column<string>(type: "TEXT", nullable: true),
                    inci_name = table.Column<string>(type: "TEXT", nullable: true),
                    member_ingredient = table.Column<string>(type: "TEXT", nullable: true),
                    factor = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_allergen_member", x => new { x.release, x.allergen, x.ordinal });
                    table.CheckConstraint("ck_allergen_member_cas_is_valid", "length(cas) BETWEEN 7 AND 12 AND cas GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(cas, '-', '')) = length(cas) - 2 AND replace(cas, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(cas, '-', ''), -2, 1) + 2 * substr(replace(cas, '-', ''), -3, 1) + 3 * substr(replace(cas, '-', ''), -4, 1) + 4 * substr(replace(cas, '-', ''), -5, 1) + 5 * substr(replace(cas, '-', ''), -6, 1) + 6 * substr(replace(cas, '-', ''), -7, 1) + 7 * substr(replace(cas, '-', ''), -8, 1) + 8 * substr(replace(cas, '-', ''), -9, 1) + 9 * substr(replace(cas, '-', ''), -10, 1)) % 10 = CAST(substr(cas, -1) AS INTEGER)");
                    table.CheckConstraint("ck_allergen_member_factor_is_decimal", "ltrim(factor, '-') GLOB '[0-9]*' AND factor GLOB '*[0-9]' AND ltrim(factor, '-') NOT GLOB '*[^0-9.]*' AND length(factor) - length(ltrim(factor, '-')) <= 1 AND length(factor) - length(replace(factor, '.', '')) <= 1");
                    table.CheckConstraint("ck_allergen_member_factor_is_positive", "CAST(factor AS REAL) > 0");
                    table.CheckConstraint("ck_allergen_member_has_an_identity", "cas IS NOT NULL OR inci_name IS NOT NULL OR member_ingredient IS NOT NULL");
                    table.CheckConstraint("ck_allergen_member_name_not_blank", "trim(name) <> ''");
                    table.ForeignKey(
                        name: "fk_allergen_member_allergen_allergen",
                        columns: x => new { x.release, x.allergen },
                        principalTable: "allergen",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_allergen_member_ingredient_member_ingredient",
                        columns: x => new { x.release, x.member_ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_allergen_member_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "limit_category",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    regulated_limit = table.Column<string>(type: "TEXT", nullable: false),
                    ifra_category = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_category", x => new { x.release, x.regulated_limit, x.ifra_category });
                    table.CheckConstraint("ck_limit_category_ifra_category_is_known", "ifra_category IN ('1', '2', '3', '4', '5A', '5B', '5C', '5D', '6', '7A', '7B', '8', '9', '10A', '10B', '11A', '11B', '12')");
                    table.ForeignKey(
                        name: "fk_limit_category_regulated_limit_regulated_limit",
                        columns: x => new { x.release, x.regulated_limit },
                        principalTable: "regulated_limit",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_limit_category_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "limit_exception",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    regulated_limit = table.Column<string>(type: "TEXT", nullable: false),
                    except_ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_exception", x => new { x.release, x.regulated_limit, x.except_ingredient });
                    table.ForeignKey(
                        name: "fk_limit_exception_ingredient_except_ingredient",
                        columns: x => new { x.release, x.except_ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_limit_exception_regulated_limit_regulated_limit",
                        columns: x => new { x.release, x.regulated_limit },
                        principalTable: "regulated_limit",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_limit_exception_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "limit_member",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    regulated_limit = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    cas = table.Column<string>(type: "TEXT", nullable: true),
                    inci_name = table.Column<string>(type: "TEXT", nullable: true),
                    member_ingredient = table.Column<string>(type: "TEXT", nullable: true),
                    factor = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_member", x => new { x.release, x.regulated_limit, x.ordinal });
                    table.CheckConstraint("ck_limit_member_cas_is_valid", "length(cas) BETWEEN 7 AND 12 AND cas GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(cas, '-', '')) = length(cas) - 2 AND replace(cas, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(cas, '-', ''), -2, 1) + 2 * substr(replace(cas, '-', ''), -3, 1) + 3 * substr(replace(cas, '-', ''), -4, 1) + 4 * substr(replace(cas, '-', ''), -5, 1) + 5 * substr(replace(cas, '-', ''), -6, 1) + 6 * substr(replace(cas, '-', ''), -7, 1) + 7 * substr(replace(cas, '-', ''), -8, 1) + 8 * substr(replace(cas, '-', ''), -9, 1) + 9 * substr(replace(cas, '-', ''), -10, 1)) % 10 = CAST(substr(cas, -1) AS INTEGER)");
                    table.CheckConstraint("ck_limit_member_factor_is_decimal", "ltrim(factor, '-') GLOB '[0-9]*' AND factor GLOB '*[0-9]' AND ltrim(factor, '-') NOT GLOB '*[^0-9.]*' AND length(factor) - length(ltrim(factor, '-')) <= 1 AND length(factor) - length(replace(factor, '.', '')) <= 1");
                    table.CheckConstraint("ck_limit_member_factor_is_positive", "CAST(factor AS REAL) > 0");
                    table.CheckConstraint("ck_limit_member_has_an_identity", "cas IS NOT NULL OR inci_name IS NOT NULL OR member_ingredient IS NOT NULL");
                    table.CheckConstraint("ck_limit_member_name_not_blank", "trim(name) <> ''");
                    table.ForeignKey(
                        name: "fk_limit_member_ingredient_member_ingredient",
                        columns: x => new { x.release, x.member_ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_limit_member_regulated_limit_regulated_limit",
                        columns: x => new { x.release, x.regulated_limit },
                        principalTable: "regulated_limit",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_limit_member_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "limit_site",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    regulated_limit = table.Column<string>(type: "TEXT", nullable: false),
                    site = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_site", x => new { x.release, x.regulated_limit, x.site });
                    table.CheckConstraint("ck_limit_site_site_is_known", "site IN ('hair', 'face', 'lips', 'body', 'hands', 'feet', 'armpits', 'nails')");
                    table.ForeignKey(
                        name: "fk_limit_site_regulated_limit_regulated_limit",
                        columns: x => new { x.release, x.regulated_limit },
                        principalTable: "regulated_limit",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_limit_site_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "limit_use",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    regulated_limit = table.Column<string>(type: "TEXT", nullable: false),
                    product_use = table.Column<string>(type: "TEXT", nullable: false),
                    is_excepted = table.Column<bool>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_use", x => new { x.release, x.regulated_limit, x.product_use });
                    table.ForeignKey(
                        name: "fk_limit_use_product_use_product_use",
                        columns: x => new { x.release, x.product_use },
                        principalTable: "product_use",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_limit_use_regulated_limit_regulated_limit",
                        columns: x => new { x.release, x.regulated_limit },
                        principalTable: "regulated_limit",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_limit_use_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_allergen_declaration_name",
                table: "allergen",
                columns: new[] { "release", "declaration_name" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "allergen_member");

            migrationBuilder.DropTable(
                name: "limit_category");

            migrationBuilder.DropTable(
                name: "limit_exception");

            migrationBuilder.DropTable(
                name: "limit_member");

            migrationBuilder.DropTable(
                name: "limit_site");

            migrationBuilder.DropTable(
                name: "limit_use");

            migrationBuilder.DropTable(
                name: "allergen");

            migrationBuilder.DropTable(
                name: "regulated_limit");

            migrationBuilder.Sql("ALTER TABLE product_use DROP COLUMN caution");

            migrationBuilder.Sql("ALTER TABLE product_use DROP COLUMN ifra_category");
        }
    }
}
