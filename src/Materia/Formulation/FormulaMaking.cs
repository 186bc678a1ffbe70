namespace Materia.Formulation;

/// <summary>What it is made with and where; every member may be left out.</summary>
public sealed record FormulaMaking
{
    /// <summary>The power of the plate at the setting used; 500 W is taken where it is left out.</summary>
    public HeaterPower? HeaterPower { get; init; }

    /// <summary>The temperature of the room, 5 to 40 [Cel]; 20 where it is left out.</summary>
    public decimal? Room { get; init; }

    /// <summary>The temperature of the fridge or other cold place, −30 to 20 and below the room's [Cel]; 5 where it is left out.</summary>
    public decimal? Chill { get; init; }

    /// <summary>The vessel: <c>steel-bowl</c>, <c>glass-beaker</c>, <c>plastic-beaker</c>, <c>ceramic-bowl</c> or <c>enamel-pot</c>; a steel bowl where it is left out.</summary>
    public string? Vessel { get; init; }
}

/// <summary>The power of a heater.</summary>
public sealed record HeaterPower
{
    /// <summary>The number, in <see cref="Unit"/>; over 0 and up to 20 kW.</summary>
    public decimal? Value { get; init; }

    /// <summary>The unit, <c>W</c> or <c>kW</c>.</summary>
    public string? Unit { get; init; }
}
