namespace JarLabel.Layout.Designs;

/// <summary>The few words that sheet and design files choose from.</summary>
internal static class LayoutKeywords
{
    internal static readonly IReadOnlyDictionary<string, LabelShape> Shapes = Of(("rectangle", LabelShape.Rectangle), ("round", LabelShape.Round));

    internal static readonly IReadOnlyDictionary<string, Face> Faces =
        Of(("regular", Face.Regular), ("semiBold", Face.SemiBold), ("bold", Face.Bold));

    internal static readonly IReadOnlyDictionary<string, Align> Across = Of(("left", Align.Start), ("center", Align.Middle), ("right", Align.End));

    internal static readonly IReadOnlyDictionary<string, Align> Down = Of(("top", Align.Start), ("middle", Align.Middle), ("bottom", Align.End));

    internal static readonly IReadOnlyDictionary<string, Ink> Inks = Of(
        ("black", Ink.Black), ("white", Ink.White), ("red", Ink.Red), ("orange", Ink.Orange), ("yellow", Ink.Yellow), ("blue", Ink.Blue), ("green", Ink.Green));

    internal static T? Optional<T>(FieldReader fields, string name, IReadOnlyDictionary<string, T> choices)
        where T : struct => fields.Has(name) ? fields.Choice(name, choices) : null;

    internal static int Optional(FieldReader fields, string name, int least, int most, int otherwise) =>
        fields.Has(name) ? fields.Count(name, least, most) : otherwise;

    /// <summary>Where an editor finds the schema; nothing here needs it.</summary>
    internal static void Schema(FieldReader fields) => fields.OptionalText("$schema");

    internal static bool Flag(FieldReader fields, string name) => fields.Has(name) && fields.Flag(name);

    internal static void RequireFalling(FieldReader fields, string name, IReadOnlyList<double> sizes)
    {
        if (sizes.Count == 0 || sizes.Zip(sizes.Skip(1)).Any(pair => pair.First <= pair.Second))
            fields.Refuse(name, LayoutProblems.SizesNotFalling());
    }

    private static Dictionary<string, T> Of<T>(params (string Word, T Value)[] words) =>
        words.ToDictionary(entry => entry.Word, entry => entry.Value, StringComparer.Ordinal);
}
