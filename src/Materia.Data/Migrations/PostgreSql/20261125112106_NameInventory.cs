using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Materia.Data.Migrations.PostgreSql
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
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    inci_name = table.Column<string>(type: "text", nullable: false),
                    inn_name = table.Column<string>(type: "text", nullable: true),
                    pharmacopoeia_name = table.Column<string>(type: "text", nullable: true),
                    functions = table.Column<string>(type: "text", nullable: false),
                    description = table.Column<string>(type: "text", nullable: true),
                    restriction = table.Column<string>(type: "text", nullable: true)
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
                    id = table.Column<int>(type: "integer", nullable: false),
                    checksum = table.Column<string>(type: "text", nullable: false),
                    imported = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    entry_count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_inventory_import", x => x.id);
                    table.CheckConstraint("ck_inventory_import_checksum_is_sha256", "checksum ~ '^[0-9a-f]{64}$'");
                    table.CheckConstraint("ck_inventory_import_count_is_positive", "entry_count > 0");
                    table.CheckConstraint("ck_inventory_import_is_the_only_one", "id = 1");
                });

            migrationBuilder.CreateTable(
                name: "inventory_number",
                columns: table => new
                {
                    entry = table.Column<int>(type: "integer", nullable: false),
                    registry = table.Column<string>(type: "text", nullable: false),
                    ordinal = table.Column<int>(type: "integer", nullable: false),
                    number = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_inventory_number", x => new { x.entry, x.registry, x.ordinal });
                    table.CheckConstraint("ck_inventory_number_cas_is_valid", "registry <> 'cas' OR (cas_is_valid(number))");
                    table.CheckConstraint("ck_inventory_number_ec_is_valid", "registry <> 'ec' OR (ec_is_valid(number))");
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
