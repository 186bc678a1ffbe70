using BenchmarkDotNet.Running;
using Materia.Benchmarks;
using Materia.Benchmarks.Load;

// "load" measures a running server over loopback, "inventory" a file of the official inventory, "substitutions" searches; anything else goes to BenchmarkDotNet, such as --filter '*'.
if (args is ["load", ..])
{
    return await LoadRun.RunAsync(args[1..]);
}

if (args is ["inventory", ..])
{
    return InventoryRun.Run(args[1..]);
}

if (args is ["substitutions", ..])
{
    return SubstitutionRun.Run(args[1..]);
}

BenchmarkSwitcher.FromAssembly(typeof(LoadRun).Assembly).Run(args);
return 0;
