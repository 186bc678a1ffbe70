namespace Materia.Api.Pages.Text;

/// <summary>Names the resource file with the lessons: a few sentences on each method, by its key.</summary>
public sealed class LessonText;
