using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.PostgreSql
{
    /// <inheritdoc />
    public partial class LimitsAndAllergens : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "caution",
                table: "product_use",
                type: "text",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "ifra_category",
                table: "product_use",
                type: "text",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "allergen",
                columns: table => new
                {
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    declaration_name = table.Column<string>(type: "text", nullable: false),
                    natural_extract = table.Column<bool>(type: "boolean", nullable: false),
                    leave_on_threshold = table.Column<decimal>(type: "numeric", nullable: false),
                    rinse_off_threshold = table.Column<decimal>(type: "numeric", nullable: false),
                    new_products_until = table.Column<DateOnly>(type: "date", nullable: true),
                    old_stock_until = table.Column<DateOnly>(type: "date", nullable: true),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_allergen", x => new { x.release, x.id });
                    table.CheckConstraint("ck_allergen_dates_in_order", "new_products_until <= old_stock_until");
                    table.CheckConstraint("ck_allergen_dates_together", "(new_products_until IS NULL) = (old_stock_until IS NULL)");
                    table.CheckConstraint("ck_allergen_declaration_name_not_blank", "trim(declaration_name) <> ''");
                    table.CheckConstraint("ck_allergen_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_allergen_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
                    table.CheckConstraint("ck_allergen_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_allergen_thresholds_in_range", "leave_on_threshold BETWEEN 0 AND 100 AND rinse_off_threshold BETWEEN 0 AND 100");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    id = table.Column<string>(type: "text", nullable: false),
                    substance = table.Column<string>(type: "text", nullable: false),
                    authority = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false),
                    exposure = table.Column<string>(type: "text", nullable: true),
                    scope_text = table.Column<string>(type: "text", nullable: false),
                    max_percent = table.Column<decimal>(type: "numeric", nullable: true),
                    stays_below = table.Column<bool>(type: "boolean", nullable: false),
                    expressed_as = table.Column<string>(type: "text", nullable: true),
                    ratio_group = table.Column<string>(type: "text", nullable: true),
                    conditions = table.Column<string>(type: "text", nullable: true),
                    warning = table.Column<string>(type: "text", nullable: true),
                    warning_above = table.Column<decimal>(type: "numeric", nullable: true),
                    applies_from = table.Column<DateOnly>(type: "date", nullable: true),
                    old_stock_until = table.Column<DateOnly>(type: "date", nullable: true),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    locator = table.Column<string>(type: "text", nullable: true),
                    check_in = table.Column<string>(type: "text", nullable: true),
                    note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_regulated_limit", x => new { x.release, x.id });
                    table.CheckConstraint("ck_regulated_limit_authority_is_known", "authority IN ('eu', 'gb', 'us', 'ifra', 'opinion')");
                    table.CheckConstraint("ck_regulated_limit_below_needs_a_share", "NOT stays_below OR max_percent IS NOT NULL");
                    table.CheckConstraint("ck_regulated_limit_dates_in_order", "applies_from <= old_stock_until");
                    table.CheckConstraint("ck_regulated_limit_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_regulated_limit_exposure_is_known", "exposure IN ('leave-on', 'rinse-off')");
                    table.CheckConstraint("ck_regulated_limit_id_is_kebab_case", "id ~ '^[a-z0-9]+(-[a-z0-9]+)*$'");
                    table.CheckConstraint("ck_regulated_limit_kind_is_known", "kind IN ('prohibited', 'restricted', 'preservative', 'fragrance', 'phototoxic', 'raw-material')");
                    table.CheckConstraint("ck_regulated_limit_max_percent_in_range", "max_percent > 0 AND max_percent <= 100");
                    table.CheckConstraint("ck_regulated_limit_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_regulated_limit_ratio_needs_a_share", "ratio_group IS NULL OR max_percent IS NOT NULL");
                    table.CheckConstraint("ck_regulated_limit_scope_text_not_blank", "trim(scope_text) <> ''");
                    table.CheckConstraint("ck_regulated_limit_substance_not_blank", "trim(substance) <> ''");
                    table.CheckConstraint("ck_regulated_limit_warning_above_in_range", "warning_above BETWEEN 0 AND 100");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    allergen = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    cas = table.Column<string>(type: "text", nullable: true),
                    inci_name = table.Column<string>(type: "text", nullable: true),
                    member_ingredient = table.Column<string>(type: "text", nullable: true),
                    factor = table.Column<decimal>(type: "numeric", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_allergen_member", x => new { x.release, x.allergen, x.ordinal });
                    table.CheckConstraint("ck_allergen_member_cas_is_valid", "cas_is_valid(cas)");
                    table.CheckConstraint("ck_allergen_member_factor_is_positive", "factor > 0");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    regulated_limit = table.Column<string>(type: "text", nullable: false),
                    ifra_category = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    regulated_limit = table.Column<string>(type: "text", nullable: false),
                    except_ingredient = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    regulated_limit = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    cas = table.Column<string>(type: "text", nullable: true),
                    inci_name = table.Column<string>(type: "text", nullable: true),
                    member_ingredient = table.Column<string>(type: "text", nullable: true),
                    factor = table.Column<decimal>(type: "numeric", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_limit_member", x => new { x.release, x.regulated_limit, x.ordinal });
                    table.CheckConstraint("ck_limit_member_cas_is_valid", "cas_is_valid(cas)");
                    table.CheckConstraint("ck_limit_member_factor_is_positive", "factor > 0");
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    regulated_limit = table.Column<string>(type: "text", nullable: false),
                    site = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    regulated_limit = table.Column<string>(type: "text", nullable: false),
                    product_use = table.Column<string>(type: "text", nullable: false),
                    is_excepted = table.Column<bool>(type: "boolean", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false)
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

            migrationBuilder.AddCheckConstraint(
                name: "ck_product_use_caution_not_blank",
                table: "product_use",
                sql: "trim(caution) <> ''");

            migrationBuilder.AddCheckConstraint(
                name: "ck_product_use_ifra_category_is_known",
                table: "product_use",
                sql: "ifra_category IN ('1', '2', '3', '4', '5A', '5B', '5C', '5D', '6', '7A', '7B', '8', '9', '10A', '10B', '11A', '11B', '12')");

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

            migrationBuilder.DropCheckConstraint(
                name: "ck_product_use_caution_not_blank",
                table: "product_use");

            migrationBuilder.DropCheckConstraint(
                name: "ck_product_use_ifra_category_is_known",
                table: "product_use");

            migrationBuilder.DropColumn(
                name: "caution",
                table: "product_use");

            migrationBuilder.DropColumn(
                name: "ifra_category",
                table: "product_use");
        }
    }
}
