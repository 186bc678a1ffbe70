using Materia.Seed.Cli;

return await SeedCommand.RunAsync(args, Console.Out, Console.Error, CancellationToken.None);
