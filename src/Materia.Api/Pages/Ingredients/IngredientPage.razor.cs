using Materia.Api.Ingredients;
using Materia.Api.Pages.Failures;
using Materia.Api.Serving;
using Materia.Catalogue;
using Materia.Chemistry;
using Materia.Chemistry.Melting;
using Microsoft.AspNetCore.Components;

namespace Materia.Api.Pages.Ingredients;

/// <summary>Everything about one ingredient.</summary>
public partial class IngredientPage
{
    private const int NearestShown = 3;

    /// <summary>The ingredient's id.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    /// <summary>The request.</summary>
    [CascadingParameter]
    public HttpContext Context { get; set; } = null!;

    /// <summary>The release.</summary>
    [Inject]
    public required ServedRelease Served { get; set; }

    private Ingredient? Found { get; set; }

    private IReadOnlyList<LimitReference> Limits { get; set; } = [];

    private BlendMelting? Melting { get; set; }

    private IReadOnlyList<Ingredient> PartOf { get; set; } = [];

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Found = Served.Release.FindIngredient(Id);
        if (Found is null)
        {
            if (Served.Release.FindPresentId(Id) is { } present)
            {
                Context.Response.Redirect("/ingredients/" + present, permanent: true);
                return;
            }

            FailurePages.NotFound(Context, Served.Index.NearestIds(Id.Length <= 60 ? Id : Id[..60], NearestShown));
            return;
        }

        Limits = LimitReference.Of(Found, Served.Release);
        Melting = IngredientMelting.Of(Found, Served.Release) is { Absent: null } melting ? melting : null;
        PartOf = [.. Served.Release.Content.Ingredients.Where(i => i.Parts.Any(p => p.Ingredient == Id))];
    }
}
