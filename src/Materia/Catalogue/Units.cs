namespace Materia.Catalogue;

/// <summary>The UCUM codes of the units in use.</summary>
public static class Units
{
    /// <summary>Degree Celsius.</summary>
    public const string Celsius = "Cel";

    /// <summary>Gram per millilitre.</summary>
    public const string GramPerMillilitre = "g/mL";

    /// <summary>Gram per 100 g.</summary>
    public const string GramPerHundredGram = "g/(100.g)";

    /// <summary>Milligram per gram.</summary>
    public const string MilligramPerGram = "mg/g";

    /// <summary>Milligram per kilogram.</summary>
    public const string MilligramPerKilogram = "mg/kg";

    /// <summary>Millipascal second.</summary>
    public const string MillipascalSecond = "mPa.s";

    /// <summary>Square millimetre per second.</summary>
    public const string SquareMillimetrePerSecond = "mm2/s";

    /// <summary>Percent by mass.</summary>
    public const string Percent = "%";

    /// <summary>Hour.</summary>
    public const string Hour = "h";

    /// <summary>The pH scale.</summary>
    public const string PhScale = "[pH]";

    /// <summary>The number one, for ratios and indices.</summary>
    public const string One = "1";

    /// <summary>Gram.</summary>
    public const string Gram = "g";

    /// <summary>Joule per gram.</summary>
    public const string JoulePerGram = "J/g";

    /// <summary>Gram per mole.</summary>
    public const string GramPerMole = "g/mol";

    /// <summary>Centimole of charge per kilogram.</summary>
    public const string CentimolePerKilogram = "cmol/kg";

    /// <summary>Millilitre.</summary>
    public const string Millilitre = "mL";

    /// <summary>Month.</summary>
    public const string Month = "mo";

    /// <summary>Gram per litre.</summary>
    public const string GramPerLitre = "g/L";

    /// <summary>Degree of angle.</summary>
    public const string Degree = "deg";
}
