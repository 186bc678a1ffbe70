using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.PostgreSql
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    label = table.Column<string>(type: "text", nullable: false),
                    used = table.Column<bool>(type: "boolean", nullable: false)
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
                    release = table.Column<int>(type: "integer", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    ingredient = table.Column<string>(type: "text", nullable: false),
                    profile = table.Column<int>(type: "integer", nullable: false),
                    species = table.Column<string>(type: "text", nullable: false),
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
                    table.PrimaryKey("pk_triacylglycerol_share", x => new { x.release, x.ingredient, x.profile, x.ordinal });
                    table.CheckConstraint("ck_triacylglycerol_share_evidence_is_known", "evidence IN ('published', 'secondary', 'common-practice', 'memory')");
                    table.CheckConstraint("ck_triacylglycerol_share_has_a_value", "low IS NOT NULL OR typical IS NOT NULL OR high IS NOT NULL");
                    table.CheckConstraint("ck_triacylglycerol_share_percent_in_range", "low BETWEEN 0 AND 100 AND typical BETWEEN 0 AND 100 AND high BETWEEN 0 AND 100");
                    table.CheckConstraint("ck_triacylglycerol_share_published_has_locator", "evidence <> 'published' OR (locator IS NOT NULL AND trim(locator) <> '')");
                    table.CheckConstraint("ck_triacylglycerol_share_range_in_order", "low <= high AND low <= typical AND typical <= high");
                    table.CheckConstraint("ck_triacylglycerol_share_species_not_blank", "trim(species) <> ''");
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
