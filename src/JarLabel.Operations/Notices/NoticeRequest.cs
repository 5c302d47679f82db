namespace JarLabel.Operations.Notices;

/// <summary>A notice that somebody wants over a shelf.</summary>
/// <param name="Shelf">The shelf; null for the shop's first.</param>
/// <param name="Paper">The paper.</param>
/// <param name="Distance">From how far it is to be read.</param>
/// <param name="Room">Air in the room the shelf stands in.</param>
/// <param name="Evaporated">Liquid that dries there in one spell of work.</param>
/// <param name="Over">How long that takes.</param>
/// <param name="File">The file to write; null for the usual place.</param>
public sealed record NoticeRequest(string? Shelf, NoticePaper Paper, Length Distance, Volume Room, Volume Evaporated, Duration Over, string? File = null)
{
    /// <summary>A distance across a small shop.</summary>
    public static Length UsualDistance { get; } = Length.FromMeters(3);

    /// <summary>A room of 4 by 5 by 2.5 metres.</summary>
    public static Volume UsualRoom { get; } = Volume.FromCubicMeters(50);

    /// <summary>A quarter of a litre: a few coats on a table.</summary>
    public static Volume UsualEvaporated { get; } = Volume.FromMilliliters(250);

    /// <summary>One hour.</summary>
    public static Duration UsualOver { get; } = Duration.FromHours(1);
}
