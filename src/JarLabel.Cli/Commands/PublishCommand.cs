using JarLabel.Web.Copying;

namespace JarLabel.Cli.Commands;

/// <summary><c>publish</c>: the jars' pages as files that need no server.</summary>
internal static class PublishCommand
{
    private static readonly Argument<string> Folder = new("DIR") { Description = "The folder: new, empty, or with an earlier copy in it." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("publish", "Write the jars' pages as files that need no server: for a stick, or for any place that serves files.") { Folder, SharedOptions.Force }, Run);

    private static Result<Answer> Run(ParsedLine typed, Session session) => typed.File(Folder).Then(folder => PocketCopy.Write(session.Workbench, folder)).Then<Answer>(report => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Pages} pages {(session.Workbench.DryRun ? "would be" : "are")} in {report.Folder}")).Gap().Rows(
            ("look at", session.Workbench.DryRun ? null : Path.Combine(report.Folder, "index.html")),
            ("carry it", "on a stick, or copy it to the root of the address that \"jarlabel shop set base-url\" names: the codes on the labels then lead there"),
            ("until then", "a copy stays as it is; publish again after work at the bench")),
        new PublishAnswerJson(report.Folder, report.Pages, report.Bytes),
        () => ServeContext.Default.PublishAnswerJson));
}
