using Materia.Chemistry.Heating;
using Materia.Formulation.Making;

namespace Materia.Formulation.Normalising;

/// <summary>Checks what it is made with and where.</summary>
internal static class MakingRules
{
    private const decimal UsualRoom = 20;
    private const decimal UsualChill = 5;

    /// <summary>The strongest plate that a workshop has [W].</summary>
    private const decimal MostPower = 20_000;

    public static NormalisedMaking Check(FormulaMaking? making, FaultList faults)
    {
        making ??= new FormulaMaking();
        List<string> assumed = [];
        var power = Power(making.HeaterPower, faults);
        var roomHolds = faults.Within("/making/room", making.Room, 5, 40, "The temperature of the room [°C]");
        var chillHolds = faults.Within("/making/chill", making.Chill, -30, 20, "The temperature of the cold place [°C]");
        var room = making.Room ?? UsualRoom;
        var chill = making.Chill ?? Math.Min(UsualChill, room - 1);
        if (roomHolds && chillHolds && chill >= room)
        {
            faults.Add("/making/room", $"The room ({Fault.Text(room)} °C) is no warmer than the cold place ({Fault.Text(chill)} °C), so nothing could be chilled. Exchange or correct them.");
        }

        var vessel = Vessel.All[0];
        if (making.Vessel is { } id)
        {
            vessel = Vessel.Find(id) ?? vessel;
            if (vessel.Id != id)
            {
                faults.Add("/making/vessel", $"\"{Fault.Shorten(id)}\" is not a vessel that is known here. Use {Fault.Words(Vessel.All.Select(v => v.Id))}.");
            }
        }
        else
        {
            assumed.Add($"No vessel was given; a {vessel.Name} is taken.");
        }

        if (making.Room is null)
        {
            assumed.Add($"No room temperature was given; {Fault.Text(room)} °C is taken.");
        }

        return new NormalisedMaking(power, (double)room, (double)chill, vessel, assumed);
    }

    private static double? Power(HeaterPower? power, FaultList faults)
    {
        if (power is null)
        {
            return null;
        }

        if (power.Value is not { } value)
        {
            faults.Add("/making/heaterPower/value", "Give the power of the plate, such as \"heaterPower\": { \"value\": 500, \"unit\": \"W\" }, or leave heaterPower out.");
            return null;
        }

        if (power.Unit is not ("W" or "kW"))
        {
            faults.Add("/making/heaterPower/unit", power.Unit is null ? "Give the unit of the power: \"W\" or \"kW\"." : $"\"{Fault.Shorten(power.Unit)}\" is not a unit of power that is known here. Use \"W\" or \"kW\".");
            return null;
        }

        var most = power.Unit == "kW" ? MostPower / 1000 : MostPower;
        if (value <= 0 || value > most)
        {
            faults.Add("/making/heaterPower/value", $"The power must be over 0 and up to {Fault.Text(most)} {power.Unit}, and {Fault.Text(value)} is not.");
            return null;
        }

        return (double)(power.Unit == "kW" ? value * 1000 : value);
    }
}
