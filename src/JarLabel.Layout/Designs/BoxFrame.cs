namespace JarLabel.Layout.Designs;

/// <summary>What every box has, whatever it holds.</summary>
/// <param name="Name">Named in messages and goldens.</param>
/// <param name="Width">Fixed width, mm; null takes what it needs (in columns) or what there is (in rows).</param>
/// <param name="Height">Fixed height, mm; null takes what it needs.</param>
/// <param name="Grow">Its share of room left over along its parent's direction; 0 takes none.</param>
/// <param name="Drop">When it may be left out for lack of room: lowest number first. Null: never.</param>
/// <param name="Across">Where its contents stand from left to right.</param>
/// <param name="Down">Where its contents stand from top to bottom.</param>
/// <param name="WhenMoved">Shown only when something else was left out.</param>
public sealed record BoxFrame(string Name, double? Width, double? Height, double Grow, int? Drop, Align Across, Align Down, bool WhenMoved);
