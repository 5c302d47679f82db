namespace JarLabel.Acceptance.Fuzz;

/// <summary>Command lines by chance: a command with some of its options, their values mostly such as a person types, the others from the drawer of what
/// breaks programs.</summary>
internal sealed class RandomLines(Random random)
{
    private static readonly string[] Nasty =
    [
        "", " ", "0", "-1", "1e308", "NaN", "1/0 pt", "999999999", "99999999999", "1-0", "1..999999999", "5..1", "\0".Replace("\0", "\u0001", StringComparison.Ordinal), "\u202e", "🎻", "e" + new string('\u0301', 200), "١٢ mL",
        "0.2 mL", "1000 L", "0.0001 g", "1,5", ",5 mL", "1.000 mL", "all,all", "a,,b", "12", "0.01", "1900-01-01", "2199-12-31T23:59", "9999-12-31", "0001-01-01", "2026-02-30", "../x", "/", "/dev/null", "no/such/file.csv",
        "list.csv", "job.json", "broken.json", "x.pdf", "x.png", "x.svg", "x.docx", "x.ics", "--", "-", "@x", "none", "all", "nothing=", "=", "a=b", "ethanol=100", "cellar=none", "main", "\ud83d", new string('x', 3000), "<b>", "'; --", "100 %", "null",
    ];

    private static readonly Dictionary<string, string[]> Proper = new()
    {
        ["jar"] = ["1", "2", "3", "4", "1-9", "7", "2..4"],
        ["grade"] = ["garnet", "blonde", "seedlac", "orange-dewaxed"],
        ["solvent"] = ["ethanol-95", "ethanol-100", "denatured-eu", "isopropanol-99"],
        ["cut"] = ["2", "1.5", "0.5", "3", "240 g/L", "12", "0.01", "2 oz/pt", "1"],
        ["volume"] = ["100 mL", "1 pt", "0,5 L", "½ fl oz", "0.5 mL", "all", "1 gal", "200 mL,50 mL"],
        ["mass"] = ["100 g", "4 oz", "1 lb 4 oz", "0.1 g", "900 kg"],
        ["date"] = ["2026-03-09", "2025-01-01T08:00", "2190-01-01"],
        ["temp"] = ["20 C", "68F", "-20 C", "40 C"],
        ["text"] = ["viola top", "für Nº 7", "x"],
        ["file"] = ["x.pdf", "x.png", "x.svg", "x.jsonl", "x.db", "x.ics"],
        ["number"] = ["1", "2", "6", "60", "95"],
        ["sheet"] = ["a4-3x7-63.5x38.1", "letter-2x5-101.6x50.8", "roll-57x32"],
        ["shelf"] = ["main", "attic"],
        ["area"] = ["1 m2", "14 sq ft"],
        ["spread"] = ["400 sqft/gal", "9 m2/L"],
        ["room"] = ["50 m3", "1800 cu ft"],
        ["kind"] = ["pad", "seal", "brush", "spray", "wash"],
    };

    /// <summary>Behind the command its arguments; then its options, each with what it takes, and without where it takes nothing.</summary>
    private static readonly string[] Commands =
    [
        "mix --grade:grade --solvent:solvent --cut:cut --pour:volume --flakes:mass --makes:volume --fill:volume --container:volume --material:text --flake-date:date --temp:temp --by:text --job:text --note:text --bag:number --bottle:number --shelf:shelf --sheet:sheet --design:text --start:number --no-label --mono --list:file --copies:number --out:file",
        "mix --grade:grade --solvent:solvent --cut:cut --pour:volume --no-label", "mix --grade:grade --solvent:solvent --cut:cut --fill:volume",
        "thin jar --to:cut --solvent:solvent --bottle:number --container:volume --temp:temp --no-label --out:file", "thicken jar --to:cut --grade:grade --bag:number --container:volume --flake-date:date --no-label",
        "blend jar jar jar --container:volume --shelf:shelf --by:text --no-label", "decant jar --into:volume --container:volume --shelf:shelf --no-label", "use jar volume --job:text", "test jar text --dry-minutes:number",
        "move jar --shelf:shelf --no-label", "note jar text", "discard jar --why:text", "undo jar --no-label", "jar jar", "shelf --shelf:shelf --due --ics:file --out:file --first:number",
        "bag add --grade:grade --mass:mass --date:date --note:text --no-label", "bag left number mass", "bag list", "bag discard number --why:text", "bottle add --solvent:solvent --volume:volume --date:date --shelf:shelf --no-label",
        "bottle left number volume", "bottle move number --shelf:shelf", "bottle list", "bottle discard number", "keeping --grade:grade --solvent:solvent --out:file", "scan text", "scan jar",
        "plan --for:kind --area:area --coats:number --cut:cut --spread:spread --waste:number --grade:grade --solvent:solvent --room:room --out:file --ics:file", "plan file --grade:grade --solvent:solvent",
        "label jar --sheet:sheet --design:text --start:number --copies:number --out:file --mono", "label --all --copies:number", "label --list:file --shelf:shelf", "label --bag:number", "label --bottle:number", "card jar --out:file",
        "notice --shelf:shelf --room:room --evaporate:volume --distance:number --out:file", "sheets", "sheets sheet --out:file", "designs --out:file", "sheet new sheet", "sheet state", "sheet back number number",
        "calibrate --sheet:sheet --dx:number --dy:number --sx:number --sy:number --out:file", "check", "shop show", "shop set text text", "shop set shelf text", "shop init --name:text", "shop setup --name:text --shelf:shelf --aging:number --sheet:sheet", "export file", "import file", "backup file", "verify",
        "calc mix --cut:cut --solvent:solvent --pour:volume --flakes:mass --makes:volume --fill:volume --temp:temp", "calc thin --from:cut --to:cut --of:volume", "calc thicken --from:cut --to:cut --of:volume", "calc blend --jar:text --jar:text",
        "calc solids --cut:cut --percent:number --solvent:solvent", "calc density --solvent:solvent --strength:number --temp:temp", "calc hazards --contents:text", "calc air --solvent:solvent --evaporate:volume --room:room --over:text --changes:number --mixing:number --out:file",
        "calc purge --changes:number --to:number --minutes:number --mixing:number", "calc coverage --cut:cut --area:area --coats:number --spread:spread", "serve devices", "serve revoke text", "brew", "mix --help", "calc",
    ];

    private static readonly string[] Shared = ["--json", "--dry-run", "--rules:text", "--units:text", "--at:date"];

    internal string[] Next()
    {
        var words = Commands[random.Next(Commands.Length)].Split(' ');
        List<string> line = [words[0]];
        foreach (var word in words.Skip(1).Where(word => !word.StartsWith('-')))
        {
            line.Add(Proper.ContainsKey(word) ? Value(word) : word);
        }

        var most = random.NextDouble() < 0.7;
        foreach (var option in words.Where(word => word.StartsWith('-')).Where(_ => random.NextDouble() < (most ? 0.8 : 0.4)).Concat(Shared.Where(_ => random.NextDouble() < 0.12)))
        {
            Add(line, option);
        }

        return [.. line];
    }

    private void Add(List<string> line, string option)
    {
        var parts = option.Split(':');
        line.Add(parts[0]);
        if (parts.Length > 1)
        {
            line.Add(Value(parts[1]));
        }
    }

    private string Value(string kind) => random.NextDouble() switch
    {
        < 0.75 => Of(Proper[kind]),
        < 0.97 => Of(Nasty),
        _ => Of(Proper[Of([.. Proper.Keys])]),
    };

    private string Of(string[] values) => values[random.Next(values.Length)];
}
