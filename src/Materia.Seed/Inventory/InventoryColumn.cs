namespace Materia.Seed.Inventory;

/// <summary>The columns that are read of an inventory file.</summary>
internal enum InventoryColumn
{
    InciName,
    InnName,
    PharmacopoeiaName,
    Cas,
    Ec,
    Description,
    Restriction,
    Function,
}
