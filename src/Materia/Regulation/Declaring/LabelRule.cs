using Materia.Catalogue;

namespace Materia.Regulation.Declaring;

/// <summary>One rule of labelling that a draft applied.</summary>
/// <param name="Id">Its number, such as <c>EU-ING-02</c>; the first letters name the market.</param>
/// <param name="Text">What it asks for.</param>
/// <param name="Source">The key of the source in which it was seen; <c>recalled</c> where it was not looked up.</param>
/// <param name="Locator">Where it stands in law, as far as that is known.</param>
/// <param name="Evidence">How it was seen.</param>
public sealed record LabelRule(string Id, string Text, string Source, string Locator, Evidence Evidence);
