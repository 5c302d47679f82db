using System.CommandLine;
using JarLabel.Bench.Cans;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;

namespace JarLabel.Cli.Commands;

/// <summary><c>can</c>: the shop's own cans of alcohol, as their safety data sheets state them.</summary>
internal static class CanCommand
{
    private const string Example = "\"ethanol=30-60,methanol=30-60\"";

    private static readonly Argument<string> Name = new("NAME") { Description = "What it is called here: \"the green can\"." };
    private static readonly Option<string> Contains = new("--contains") { Description = $"Section 3 of its data sheet: {Example}; also <3, >=50, and rest for what the others leave.", HelpName = "contents" };
    private static readonly Option<bool> ByVolume = new("--by-volume") { Description = "The percentages are by volume; else by weight, as data sheets give them." };
    private static readonly Option<string> Id = new("--id") { Description = "The word for it in commands; else one is made of its name.", HelpName = "word" };

    internal static Command Create(Runner runner) => new("can", "The shop's own cans of alcohol, as their safety data sheets state them.")
    {
        runner.Runs(new Command("add", $"Enter a can from its data sheet: can add \"the green can\" --contains {Example}") { Name, Contains, ByVolume, Id }, Add),
        runner.Runs(new Command("list", "The cans of this shop, with what follows from their data sheets."), List),
    };

    private static Result<Answer> Add(Typed typed, Session session)
    {
        var name = typed.Needed(Name, Words.PrintedUpTo(CanWords.LongestName));
        var measure = typed.Switch(ByVolume) ? Measure.Volume : Measure.Weight;
        var contents = typed.Needed(Contains, Example, (text, where) => ContentsText.Read(text, measure, session.Workbench.Catalog, where));
        return typed.Then(() => CanBook.Add(session.Workbench, new CanRequest(name, contents, typed.Text(Id))).Then<Answer>(can => CanAnswer.Of(session.Workbench, can)));
    }

    private static Result<Answer> List(Typed typed, Session session) => CanBook.All(session.Workbench).Then<Answer>(cans => CanAnswer.Of(session.Workbench, cans));
}
