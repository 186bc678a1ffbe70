using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Triacylglycerols : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "triacylglycerol_profile",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    label = table.Column<string>(type: "TEXT", nullable: false),
                    used = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_triacylglycerol_profile", x => new { x.release, x.ingredient, x.ordinal });
                    table.CheckConstraint("ck_triacylglycerol_profile_label_not_blank", "trim(label) <> ''");
                    table.ForeignKey(
                        name: "fk_triacylglycerol_profile_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_triacylglycerol_profile_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "triacylglycerol_share",
                columns: table => new
                {
                    release = table.Column<int>(type: "INTEGER", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    ingredient = table.Column<string>(type: "TEXT", nullable: false),
                    profile = table.Column<int>(type: "INTEGER", nullable: false),
                    species = table.Column<string>(type: "TEXT", nullable: false),
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
                    table.PrimaryKey("pk_triacylglycerol_share", x => new { x.release, x.ingredient, x.profile, x.ordinal });
                    table.CheckConstraint("ck_triacylglycerol_share_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_triacylglycerol_share_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_triacylglycerol_share_high_is_decimal", "ltrim(high, '-') GLOB '[0-9]*' AND high GLOB '*[0-9]' AND ltrim(high, '-') NOT GLOB '*[^0-9.]*' AND length(high) - length(ltrim(high, '-')) <= 1 AND length(high) - length(replace(high, '.', '')) <= 1");
                    table.CheckConstraint("ck_triacylglycerol_share_low_is_decimal", "ltrim(low, '-') GLOB '[0-9]*' AND low GLOB '*[0-9]' AND ltrim(low, '-') NOT GLOB '*[^0-9.]*' AND length(low) - length(ltrim(low, '-')) <= 1 AND length(low) - length(replace(low, '.', '')) <= 1");
                    table.CheckConstraint("ck_triacylglycerol_share_percent_in_range", "CAST(low AS REAL) BETWEEN 0 AND 100 AND CAST(typical AS REAL) BETWEEN 0 AND 100 AND CAST(high AS REAL) BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_triacylglycerol_share_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_triacylglycerol_share_range_in_order", "CAST(low AS REAL) <= CAST(high AS REAL) AND CAST(low AS REAL) <= CAST(typical AS REAL) AND CAST(typical AS REAL) <= CAST(high AS REAL)");
                    table.CheckConstraint("ck_triacylglycerol_share_species_not_blank", "trim(species) <> ''");
                    table.CheckConstraint("ck_triacylglycerol_share_typical_is_decimal", "ltrim(typical, '-') GLOB '[0-9]*' AND typical GLOB '*[0-9]' AND ltrim(typical, '-') NOT GLOB '*[^0-9.]*' AND length(typical) - length(ltrim(typical, '-')) <= 1 AND length(typical) - length(replace(typical, '.', '')) <= 1");
                    table.ForeignKey(
                        name: "fk_triacylglycerol_share_ingredient_ingredient",
                        columns: x => new { x.release, x.ingredient },
                        principalTable: "ingredient",
                        principalColumns: new[] { "release", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_triacylglycerol_share_release_release",
                        column: x => x.release,
                        principalTable: "release",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_triacylglycerol_share_source_check_in",
                        columns: x => new { x.release, x.check_in },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_triacylglycerol_share_source_source",
                        columns: x => new { x.release, x.source },
                        principalTable: "source",
                        principalColumns: new[] { "release", "id" });
                    table.ForeignKey(
                        name: "fk_triacylglycerol_share_triacylglycerol_profile_profile",
                        columns: x => new { x.release, x.ingredient, x.profile },
                        principalTable: "triacylglycerol_profile",
                        principalColumns: new[] { "release", "ingredient", "ordinal" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_triacylglycerol_profile_ingredient",
                table: "triacylglycerol_profile",
                columns: new[] { "release", "ingredient" },
                unique: true,
                filter: "used");

            migrationBuilder.CreateIndex(
                name: "ix_triacylglycerol_share_species",
                table: "triacylglycerol_share",
                columns: new[] { "release", "ingredient", "profile", "species" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "triacylglycerol_share");

            migrationBuilder.DropTable(
                name: "triacylglycerol_profile");
        }
    }
}
