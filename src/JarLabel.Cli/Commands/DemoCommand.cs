using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Demo;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Commands;

/// <summary><c>demo</c>: an invented shop to try things on.</summary>
internal static class DemoCommand
{
    private static readonly Argument<string> Folder = new("DIR") { Description = "A folder that is new or empty." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("demo", "Build an invented shop with an invented year in it, to look at and to try things on.") { Folder }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.File(Folder).Then(folder => session.Workbench.DryRun
        ? TypingProblems.NoDryRun("demo")
        : DemoShop.Build(folder, session.Workbench.Folder)).Then<Answer>(report => Answer.Of(
            new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"An invented year until {DateWords.Of(report.Until)}: {report.Jars} jars")).Gap().Rows(
            [
                ("shop", report.Folder),
                ("printed", string.Create(CultureInfo.InvariantCulture, $"{report.Files.Count} files in labels and previews")),
            ]).Next(string.Create(CultureInfo.InvariantCulture, $"jarlabel shelf --shop \"{report.Folder}\" --at {report.Until:yyyy-MM-dd}")),
            new DemoAnswerJson(report.Folder, report.Jars, report.Files, report.Until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            c => c.DemoAnswerJson));
}
