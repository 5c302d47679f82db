namespace JarLabel.Render.Drawing;

/// <summary>What each ink is on paper.</summary>
internal static class Inks
{
    internal static SKColor Colour(Ink ink) => new(0xFF000000 | Rgb(ink));

    /// <summary>On a one-bit printer.</summary>
    internal static SKColor BlackOrWhite(Ink ink) => Colour(OneBit.Of(ink));

    /// <summary>Red, green and blue, 0xRRGGBB. Signs and signal panels keep near the safety colours of the trade's wall signs; black is
    /// pure, so that a printer takes its black cartridge and no composite.</summary>
    internal static uint Rgb(Ink ink) => ink switch
    {
        Ink.Black => 0x000000,
        Ink.White => 0xFFFFFF,
        Ink.Red => 0xD7141A,
        Ink.Orange => 0xF08A00,
        Ink.Yellow => 0xF9C800,
        Ink.Blue => 0x005CA9,
        Ink.Green => 0x00824A,
        Ink.Pale => 0xD2D2D2,
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "Not an ink of the house."),
    };
}
