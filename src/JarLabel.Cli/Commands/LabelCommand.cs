using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Labels.Many;
using JarLabel.Bench.Supplies;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>label</c>: prints a jar's label again, as the jar is now.</summary>
internal static class LabelCommand
{
    private static readonly JarsOptions Jars = new();
    private static readonly Option<string> Bag = new("--bag") { Description = "Instead of a jar: the bag of flakes.", HelpName = "bag" };
    private static readonly Option<string> Bottle = new("--bottle") { Description = "Instead of a jar: the bottle of alcohol.", HelpName = "bottle" };
    internal static readonly Option<string> Out = new("--out") { Description = "The file to write: .pdf, .png or .svg; else a PDF in the shop's labels folder.", HelpName = "file" };

    internal static Command Create(Runner runner)
    {
        var command = new Command("label", "Print labels again, as the jars are now; or that of a bag or bottle.");
        Jars.AddTo(command);
        foreach (var option in (Option[])[Bag, Bottle, Out, SharedOptions.Force])
        {
            command.Add(option);
        }

        LabelOptions.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var (bag, bottle) = (typed.Value(Bag, SupplyNumber.ReadBag), typed.Value(Bottle, SupplyNumber.ReadBottle));
        var choice = LabelOptions.Read(typed) with { Copies = Jars.Copies(typed) };
        var wanted = Jars.Read(typed);
        if (((bool[])[Jars.Given(typed), typed.Text(Bag) is not null, typed.Text(Bottle) is not null]).Count(named => named) != 1)
        {
            typed.Refuse(TypingProblems.OneLabel());
        }

        if (Jars.GivenCopies(typed) && (bag ?? bottle) is not null)
        {
            typed.Refuse(TypingProblems.CopiesOfJarsOnly());
        }

        var file = FileOf(typed);
        return typed.Then(() =>
            bag is { } flakes ? BagDesk.Label(session.Workbench, flakes, choice, file).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome))
            : bottle is { } alcohol ? BottleDesk.Label(session.Workbench, alcohol, choice, file).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome))
            : OfJars(session, wanted, choice, file));
    }

    private static Result<Answer> OfJars(Session session, JarsWanted wanted, LabelChoice choice, string? file) => wanted.One is { } jar && choice.Copies == 1
        ? LabelJar.Do(session.Workbench, jar, choice, file).Then<Answer>(outcome => JarAnswer.Labelled(session.Workbench, outcome))
        : LabelJars.Do(session.Workbench, wanted, choice, file, session.Progress("labels")).Then<Answer>(labels => LabelsAnswer.Of(session.Workbench, labels));

    /// <summary>The file to write, or null for the usual place.</summary>
    internal static string? FileOf(Typed typed) => typed.File(Out);
}
