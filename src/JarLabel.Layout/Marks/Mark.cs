namespace JarLabel.Layout.Marks;

/// <summary>One thing on a page, finally placed: millimetres from the page's top-left corner, y downwards. A renderer draws
/// marks in order and decides nothing.</summary>
/// <param name="Box">The design box it came from, for messages and goldens.</param>
public abstract record Mark(string Box);
