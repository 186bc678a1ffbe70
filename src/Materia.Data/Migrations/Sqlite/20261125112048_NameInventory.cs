using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class NameInventory : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "inventory_entry",
                columns: table => new
                {
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    inci_name = table.Column<string>(type: "TEXT", nullable: false),
                    inn_name = table.Column<string>(type: "TEXT", nullable: true),
                    pharmacopoeia_name = table.Column<string>(type: "TEXT", nullable: true),
                    functions = table.Column<string>(type: "TEXT", nullable: false),
                    description = table.Column<string>(type: "TEXT", nullable: true),
                    restriction = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_inventory_entry", x => x.ordinal);
                    table.CheckConstraint("ck_inventory_entry_inci_name_is_not_empty", "trim(inci_name) <> ''");
                    table.CheckConstraint("ck_inventory_entry_ordinal_is_not_negative", "ordinal >= 0");
                });

            migrationBuilder.CreateTable(
                name: "inventory_import",
                columns: table => new
                {
                    id = table.Column<int>(type: "INTEGER", nullable: false),
                    checksum = table.Column<string>(type: "TEXT", nullable: false),
                    imported = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    entry_count = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_inventory_import", x => x.id);
                    table.CheckConstraint("ck_inventory_import_checksum_is_sha256", "length(checksum) = 64 AND checksum NOT GLOB '*[^0-9a-f]*'");
                    table.CheckConstraint("ck_inventory_import_count_is_positive", "entry_count > 0");
                    table.CheckConstraint("ck_inventory_import_is_the_only_one", "id = 1");
                });

            migrationBuilder.CreateTable(
                name: "inventory_number",
                columns: table => new
                {
                    entry = table.Column<int>(type: "INTEGER", nullable: false),
                    registry = table.Column<string>(type: "TEXT", nullable: false),
                    ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    number = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_inventory_number", x => new { x.entry, x.registry, x.ordinal });
                    table.CheckConstraint("ck_inventory_number_cas_is_valid", "registry <> 'cas' OR (length(number) BETWEEN 7 AND 12 AND number GLOB '[1-9]*-[0-9][0-9]-[0-9]' AND length(replace(number, '-', '')) = length(number) - 2 AND replace(number, '-', '') NOT GLOB '*[^0-9]*' AND (1 * substr(replace(number, '-', ''), -2, 1) + 2 * substr(replace(number, '-', ''), -3, 1) + 3 * substr(replace(number, '-', ''), -4, 1) + 4 * substr(replace(number, '-', ''), -5, 1) + 5 * substr(replace(number, '-', ''), -6, 1) + 6 * substr(replace(number, '-', ''), -7, 1) + 7 * substr(replace(number, '-', ''), -8, 1) + 8 * substr(replace(number, '-', ''), -9, 1) + 9 * substr(replace(number, '-', ''), -10, 1)) % 10 = CAST(substr(number, -1) AS INTEGER))");
                    table.CheckConstraint("ck_inventory_number_ec_is_valid", "registry <> 'ec' OR (number GLOB '[0-9][0-9][0-9]-[0-9][0-9][0-9]-[0-9]' AND (1 * substr(replace(number, '-', ''), 1, 1) + 2 * substr(replace(number, '-', ''), 2, 1) + 3 * substr(replace(number, '-', ''), 3, 1) + 4 * substr(replace(number, '-', ''), 4, 1) + 5 * substr(replace(number, '-', ''), 5, 1) + 6 * substr(replace(number, '-', ''), 6, 1)) % 11 = CAST(substr(number, -1) AS INTEGER))");
                    table.CheckConstraint("ck_inventory_number_registry_is_known", "registry IN ('cas', 'ec')");
                    table.ForeignKey(
                        name: "fk_inventory_number_inventory_entry_entry",
                        column: x => x.entry,
                        principalTable: "inventory_entry",
                        principalColumn: "ordinal",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_inventory_entry_inci_name",
                table: "inventory_entry",
                column: "inci_name",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "inventory_import");

            migrationBuilder.DropTable(
                name: "inventory_number");

            migrationBuilder.DropTable(
                name: "inventory_entry");
        }
    }
}
