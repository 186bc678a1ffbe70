using Materia.Api;

var app = MateriaApi.Build(args);
await app.RunAsync();
