using JarLabel.Core.Labels;

namespace JarLabel.Cli.Commands;

/// <summary><c>check</c>: reads a shop's own catalog and layout files and tells every problem in them.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string?> Folder = new("DIR") { Description = "The folder with catalog/ and layouts/; else the shop's.", Arity = ArgumentArity.ZeroOrOne };

    internal static Command Create(Runner runner) =>
        runner.RunsWithoutShop(new Command("check", "Read layouts and catalog files and report every problem.") { Folder }, Run);

    private static Result<Answer> Run(ParsedLine typed) => typed.Text(Folder) is { } named && string.IsNullOrWhiteSpace(named)
        ? TypingProblems.NotAFolder(Folder.Name)
        : Look(typed);

    private static Result<Answer> Look(ParsedLine typed) => ShopCheck.Of(typed.Text(Folder) ?? typed.Text(SharedOptions.Shop), Environment.GetEnvironmentVariable).Then<Answer>(files => Answer.Of(
        new Screen().Title($"{CountWords.Of(files.Count, "file")} of the shop's own read with ours; nothing is wrong with {(files.Count == 1 ? "it" : "them")}."),
        tell => new CheckAnswerJson(files.Count, tell(files.Cautions)),
        c => c.CheckAnswerJson,
        files.Cautions));
}
