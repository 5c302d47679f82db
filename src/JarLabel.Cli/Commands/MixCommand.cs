using System.CommandLine;
using JarLabel.Bench.Mixing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Commands;

/// <summary><c>mix</c>: solves a batch, records the jar, writes its label.</summary>
internal static class MixCommand
{
    private static readonly Option<string> Grade = new("--grade") { Description = "The flakes: garnet, blonde, orange-dewaxed, seedlac, ...", HelpName = "id" };
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly BatchOptions Batch = new();
    private static readonly Option<string> Container = new("--container") { Description = "What the jar holds to the brim: \"500 mL\".", HelpName = "volume" };
    private static readonly Option<string> Material = new("--material") { Description = "glass (the default), lined-metal, metal or plastic.", HelpName = "material" };
    private static readonly Option<string> Form = new("--form") { Description = "flake, button, seed or ground; else the grade's usual form.", HelpName = "form" };
    private static readonly Option<string> FlakeDate = new("--flake-date") { Description = "When the flakes were made or bought: 2025-10-01.", HelpName = "date" };
    private static readonly Option<string> Shelf = new("--shelf") { Description = "The shelf it goes to; else the shop's first.", HelpName = "name" };
    private static readonly Option<string> By = new("--by") { Description = "Who mixed it.", HelpName = "name" };
    private static readonly Option<string> Job = new("--job") { Description = "What it is for: \"viola top\".", HelpName = "text" };
    private static readonly Option<string> Note = new("--note") { Description = "Anything else.", HelpName = "text" };
    private static readonly Option<bool> NoLabel = new("--no-label") { Description = "Record the jar, write no label." };
    private static readonly LabelOptions Label = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("mix", "Mix a batch: --grade, --solvent, --cut and one of --pour, --flakes, --makes, --fill.") { Grade, Solvent };
        Batch.AddTo(command);
        foreach (var option in (Option[])[Container, Material, Form, FlakeDate, Shelf, By, Job, Note, NoLabel])
        {
            command.Add(option);
        }

        Label.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var bench = session.Workbench;
        var order = Batch.Read(typed);
        var request = new MixRequest(
            typed.Needed(Grade, "garnet", session.Grade),
            typed.Needed(Solvent, "ethanol-95", session.Solvent),
            order,
            new Container(typed.Value(Material, Words.Material) ?? ContainerMaterial.Glass, typed.Value(Container, VolumeText.Read) ?? order.Fill),
            typed.Fact(Form, bench.Catalog.Forms.Named),
            FlakeDay(typed, bench.Now),
            Batch.ReadTemperature(typed),
            typed.Text(Shelf),
            typed.Fact(By, Words.TextUpTo(60)),
            typed.Fact(Job, Words.TextUpTo(120)),
            typed.Fact(Note, Words.TextUpTo(500)),
            typed.Switch(NoLabel) ? null : Label.Read(typed));
        return typed.Then(() => MixJar.Do(bench, request).Then<Answer>(outcome => JarAnswer.Mixed(session, outcome)));
    }

    private static DateOnly? FlakeDay(Typed typed, DateTime now)
    {
        var day = typed.Value(FlakeDate, Words.Day);
        if (day > DateOnly.FromDateTime(now))
        {
            typed.Refuse(TypingProblems.FlakesFromTheFuture(typed.Text(FlakeDate)!, FlakeDate.Name));
        }

        return day;
    }
}
