namespace JarLabel.Core.Quantities;

/// <summary>What can be wrong with an amount, a cut or a temperature that somebody typed.</summary>
internal static partial class QuantityProblems
{
    private static readonly Dictionary<UnitKind, (string Named, string Examples, double Large, string LargeUnit)> Kinds = new()
    {
        [UnitKind.Volume] = ("a volume", VolumeExamples, 1000, "L"),
        [UnitKind.Room] = ("the size of a room", "\"50 m3\", \"1800 cu ft\", \"20 x 15 x 9 ft\"", 1e6, "m3"),
        [UnitKind.Mass] = ("a weight", MassExamples, 1000, "kg"),
        [UnitKind.Area] = ("an area", "\"14 sq ft\", \"1.3 m2\", \"30 x 20 in\"", 10_000, "m2"),
        [UnitKind.Length] = ("a length", "\"30 in\", \"1.2 m\"", 100, "m"),
        [UnitKind.Time] = ("a time", "\"1 h\", \"45 min\"", 3600, "h"),
    };

    /// <summary>Millilitres in an imperial gallon: rooms are not measured in anything as small.</summary>
    private const double LargestJarUnit = 4546.09;

    private const string VolumeExamples = "\"350 mL\", \"1 1/2 pt\", \"0.5 L\", \"12 fl oz\", \"1 imp pt\"";
    private const string MassExamples = "\"4 oz\", \"1/4 lb\", \"113 g\"";

    internal static Problem NotAnAmount(string read, UnitKind kind, string where) =>
        new("JL101", $"Read {Quoted.Of(read)} as {Named(kind)}; a number above zero and a unit are wanted, such as {Examples(kind)}. Signs, exponents and divisions by zero are not read.", where);

    internal static Problem UnitMissing(string read, UnitKind kind, string where) =>
        new("JL102", $"Read {Quoted.Of(read)} with no unit after the number; write {Named(kind)} such as {Examples(kind)}.", where);

    internal static Problem UnitUnknown(string read, string word, UnitKind kind, string where) =>
        new("JL102", $"Read {Quoted.Of(read)}; the unit {Quoted.Of(word)} is not known. Allowed for {Named(kind)}: {Units(kind)}; for example {Examples(kind)}.", where);

    internal static Problem WrongKind(string read, UnitWord unit, UnitKind wanted, string where) => (unit.Kind, wanted) switch
    {
        (UnitKind.Mass, UnitKind.Volume) => new("JL103", $"Read {Quoted.Of(read)}: {Quoted.Of(unit.Words[0])} is a weight, and a volume is wanted here. Write \"fl oz\" if fluid ounces were meant; \"oz\" is for flakes on a scale. For example {VolumeExamples}.", where),
        (UnitKind.Volume, UnitKind.Mass) => new("JL103", $"Read {Quoted.Of(read)}: {Quoted.Of(unit.Words[0])} is a volume, and a weight is wanted here. Write \"oz\" if ounces on a scale were meant; \"fl oz\" is for liquid. For example {MassExamples}.", where),
        _ => new("JL103", $"Read {Quoted.Of(read)}: {Quoted.Of(unit.Words[0])} is {Named(unit.Kind)}, and {Named(wanted)} is wanted here, such as {Examples(wanted)}.", where),
    };

    internal static Problem AmbiguousComma(string read, string where) =>
        new("JL104", $"Read {Quoted.Of(read)}: the comma could part thousands or decimals. Write {Thousands().Replace(read.Trim(), "$1$2")} or {Thousands().Replace(read.Trim(), Decimals)}, without the comma.", where);

    internal static Problem AmbiguousPoint(string read, double number, string unit, string where) =>
        new("JL104", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}: the point could part thousands or decimals. Write {number * 1000:0} {unit} or {number:0.###} {unit}."), where);

    internal static Problem SecondAmount(string read, string first, string second, string where) =>
        new("JL475", $"Read {Quoted.Of(read)} as one amount, in which {Quoted.Of(second)} follows {Quoted.Of(first)}; the units of one amount go from large to small, such as \"1 lb 4 oz\" or \"1 gal 2 qt\". Where several amounts may stand, part them by commas: \"200 mL, 300 mL\".", where);

    internal static Problem OtherDimensions(string read, UnitKind kind, int sides, int wanted, string where) =>
        new("JL476", $"Read {Quoted.Of(read)}, which is {sides} lengths; {Named(kind)} is {(wanted == 2 ? "length by width" : "length by width by height")}, such as {Examples(kind)}.", where);

    internal static Problem InDimensions(string read, Problem side) => side.Message.Contains(Quoted.Of(read), StringComparison.Ordinal)
        ? side
        : side with { Text = Message.Of($"In {Quoted.Of(read)}: {side.Text}") };

    internal static Problem TooSmallToMeasure(string read, UnitKind kind, string least, string where) =>
        new("JL105", $"Read {Quoted.Of(read)}; {Named(kind)} must be at least {least}, the least that a bench can measure, such as {Examples(kind)}.", where);

    internal static Problem AmountOutOfRange(string read, UnitKind kind, double least, double most, string where) => string.IsNullOrWhiteSpace(read)
        ? new("JL105", $"Read nothing; write {Named(kind)}, such as {Examples(kind)}.", where)
        : new("JL105", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}; {Named(kind)} must be {(least > 0 ? $"at least {least / Kinds[kind].Large:0.###} {Kinds[kind].LargeUnit}" : "more than zero")} and at most {most / Kinds[kind].Large:0} {Kinds[kind].LargeUnit}, such as {Examples(kind)}."), where);

    internal static Problem NotACut(string read, string where) =>
        new("JL111", $"Read {Quoted.Of(read)} as a cut; wanted is pounds of flakes per US gallon of alcohol poured, such as \"1.5\", \"2 lb\", \"240 g/L\", \"2 oz/pt\" or \"2 lb in 3 gal\".", where);

    internal static Problem InCut(string read, Problem part) => part.Message.Contains(Quoted.Of(read), StringComparison.Ordinal)
        ? part
        : part with { Text = Message.Of($"Read {Quoted.Of(read)} as a cut, a weight in a volume. {part.Text}") };

    internal static Problem CutOutOfRange(string read, double pounds, string where) =>
        new("JL112", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}, {ArticleWords.A(pounds.ToString("0.###", CultureInfo.InvariantCulture))} lb cut; allowed is {PoundCut.Weakest} to {PoundCut.Strongest:0} lb of flakes per US gallon of alcohol poured. A wash coat is about 1/2, padding 1 to 2, a spray build 3."), where);

    internal static Problem NotASpread(string read, string where) =>
        new("JL123", $"Read {Quoted.Of(read)} as a spread; write the area that a volume covers, such as \"400 sqft/gal\" or \"9 m2/L\", from 1 to 1000 m2/L.", where);

    internal static Problem NotATemperature(string read, string where) =>
        new("JL121", $"Read {Quoted.Of(read)} as a temperature; write the number with its scale, such as \"68F\" or \"20 C\".", where);

    internal static Problem TemperatureOutOfRange(string read, string where) =>
        new("JL122", $"Read {Quoted.Of(read)}; a bench or shelf lies between -20 C and 40 C (-4F to 104F).", where);

    /// <summary>The comma read as the one that parts decimals: 1,500 is 1.5.</summary>
    private static string Decimals(Match written)
    {
        var decimals = written.Groups[2].Value.TrimEnd('0');
        return decimals.Length == 0 ? written.Groups[1].Value : $"{written.Groups[1].Value}.{decimals}";
    }

    [GeneratedRegex("([0-9]),([0-9]{3})")]
    private static partial Regex Thousands();

    private static string Named(UnitKind kind) => Kinds[kind].Named;

    private static string Examples(UnitKind kind) => Kinds[kind].Examples;

    private static string Units(UnitKind kind) =>
        string.Join(", ", UnitWord.All.Where(u => u.Measures(kind) && (kind != UnitKind.Room || u.Size > LargestJarUnit)).Select(u => (u.System == "imperial" ? "imp " : "") + u.Words[0]));
}

/// <summary>What a unit word measures.</summary>
internal enum UnitKind
{
    /// <summary>Size in millilitres.</summary>
    Volume,

    /// <summary>Size in millilitres, of the air in a room.</summary>
    Room,

    /// <summary>Size in grams.</summary>
    Mass,

    /// <summary>Size in square centimetres.</summary>
    Area,

    /// <summary>Size in centimetres.</summary>
    Length,

    /// <summary>Size in seconds.</summary>
    Time,
}
