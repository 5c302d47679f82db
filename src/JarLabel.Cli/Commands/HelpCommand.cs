using JarLabel.Core.Catalog;

namespace JarLabel.Cli.Commands;

/// <summary><c>help</c>: where to begin, a topic, or a command.</summary>
internal static class HelpCommand
{
    /// <summary>The topics, each a text that travels inside the program.</summary>
    private static readonly string[] Topics = ["amounts", "files", "layouts", "lists", "phone", "printing", "safety", "sources"];

    private static readonly Argument<string[]> What = new("WHAT") { Description = $"A command, or a topic: {string.Join(", ", Topics)}.", Arity = ArgumentArity.ZeroOrMore };

    internal static Command Create(Runner runner)
    {
        var command = new Command("help", "Where to begin; a command; a topic.") { What };
        var spelling = new LineSpelling(command);
        command.SetAction(parsed =>
        {
            string[] what = parsed.GetValue(What) ?? [];
            return CommandTree.HelpOf(what, runner) is { } help
                ? help()
                : runner.Terminal.Say(spelling.Of(Of(what, spelling)), parsed.GetValue(SharedOptions.Json));
        });
        return command;
    }

    private static Result<Answer> Of(string[] what, LineSpelling spelling) => what switch
    {
        [] => Start(spelling),
        [var topic] when Topics.Contains(topic, StringComparer.OrdinalIgnoreCase) => Topic(topic.ToLowerInvariant()),
        _ => TypingProblems.NoSuchHelp(string.Join(' ', what), Nearest.To(what[0], StepTable.Words.Concat(Topics)), Topics),
    };

    private static Answer Start(LineSpelling spelling)
    {
        var mix = StepTable.All.First();
        var example = spelling.Write(new Remedy(mix.Verb, mix.Example));
        var single = StepTable.All.Where(step => !step.Verb.Contains(' ', StringComparison.Ordinal)).ToArray();
        var screen = new Screen().Title("JarLabel mixes shellac from flakes and alcohol, keeps the ledger of every jar, and prints its label.").Gap()
            .Rows(
                ("begin with", example),
                ("at the bench", Listed(single.Where(step => !step.Looks && (step.IsOfJar || !step.IsTypedOnly)))),
                ("to look at", Listed(single.Where(step => step.Looks && !step.IsTypedOnly))),
                ("stock and sums", string.Join(", ", StepTable.Words.Where(word => StepTable.About(word) is not null))),
                ("the shop", $"{Listed(single.Where(step => step.IsTypedOnly))}, {string.Join(", ", CommandTree.OwnNames)}"),
                ("topics", string.Join(", ", Topics)))
            .NextInWords("jarlabel help mix, or jarlabel help amounts");
        return Answer.Of(screen, new HelpAnswerJson("", PlainText(screen)), () => ServeContext.Default.HelpAnswerJson);
    }

    private static Answer Topic(string topic)
    {
        var lines = Encoding.UTF8.GetString(EmbeddedFile.Read(typeof(HelpCommand).Assembly, $"help/{topic}.txt")).TrimEnd().Split('\n');
        var screen = new Screen().Title(lines[0]);
        foreach (var line in lines.Skip(1))
        {
            screen.Text(line);
        }

        return Answer.Of(screen, new HelpAnswerJson(topic, string.Join('\n', lines)), () => ServeContext.Default.HelpAnswerJson);
    }

    private static string Listed(IEnumerable<Step> steps) => string.Join(", ", steps.Select(step => step.Verb));

    private static string PlainText(Screen screen) => string.Join('\n', screen.Lines.Select(line => line.Spelled.Text));
}
