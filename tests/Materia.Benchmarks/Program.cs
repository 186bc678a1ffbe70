using BenchmarkDotNet.Running;
using Materia.Benchmarks.Load;

// "load" measures a running server over loopback; anything else goes to BenchmarkDotNet, such as --filter '*'.
if (args is ["load", ..])
{
    return await LoadRun.RunAsync(args[1..]);
}

BenchmarkSwitcher.FromAssembly(typeof(LoadRun).Assembly).Run(args);
return 0;
