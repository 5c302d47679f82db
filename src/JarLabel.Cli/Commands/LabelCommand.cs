using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Supplies;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>label</c>: prints a jar's label again, as the jar is now.</summary>
internal static class LabelCommand
{
    private static readonly Argument<string?> Jar = new("JAR") { Description = "The jar: 142 or 142-5.", Arity = ArgumentArity.ZeroOrOne };
    private static readonly Option<string> Bag = new("--bag") { Description = "Instead of a jar: the bag of flakes.", HelpName = "bag" };
    private static readonly Option<string> Bottle = new("--bottle") { Description = "Instead of a jar: the bottle of alcohol.", HelpName = "bottle" };
    internal static readonly Option<string> Out = new("--out") { Description = "The file to write: .pdf, .png or .svg; else a PDF in the shop's labels folder.", HelpName = "file" };
    private static readonly LabelOptions Label = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("label", "Print a jar's label again, as the jar is now; or that of a bag or bottle.") { Jar, Bag, Bottle, Out };
        Label.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var (bag, bottle) = (typed.Value(Bag, SupplyNumber.ReadBag), typed.Value(Bottle, SupplyNumber.ReadBottle));
        var choice = Label.Read(typed);
        if (((string?[])[typed.Text(Jar), typed.Text(Bag), typed.Text(Bottle)]).Count(named => named is not null) != 1)
        {
            typed.Refuse(TypingProblems.OneLabel());
        }

        return typed.Then(() =>
            bag is { } flakes ? BagDesk.Label(session.Workbench, flakes, choice, FileOf(typed)).Then<Answer>(outcome => SupplyAnswer.Of(session, outcome))
            : bottle is { } alcohol ? BottleDesk.Label(session.Workbench, alcohol, choice, FileOf(typed)).Then<Answer>(outcome => SupplyAnswer.Of(session, outcome))
            : OfJar(typed, session, choice));
    }

    private static Result<Answer> OfJar(Typed typed, Session session, LabelChoice choice)
    {
        var number = JarNumber.Read(typed.Text(Jar)!, "JAR");
        return number.Then(jar => LabelJar.Do(session.Workbench, jar, choice, FileOf(typed)).Then<Answer>(outcome => JarAnswer.Labelled(session, outcome)));
    }

    /// <summary>The file to write, or null for the usual place.</summary>
    internal static string? FileOf(Typed typed) => typed.Text(Out) is { } named ? Path.GetFullPath(named) : null;
}
