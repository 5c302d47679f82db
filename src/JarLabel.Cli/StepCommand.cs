using System.CommandLine;
using JarLabel.Bench.Printing;
using JarLabel.Bench.Steps;
using JarLabel.Cli.Commands;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli;

/// <summary>A declared step as a command: its options and arguments, their help, and its problems in the command line's own spelling.</summary>
internal sealed class StepCommand : IValueSource, ISpelling
{
    private readonly Step step;
    private readonly Dictionary<string, Symbol> symbols = [];
    private ParseResult? parsed;

    private StepCommand(Step step) => this.step = step;

    /// <summary>The command.</summary>
    internal static Command Of(Step step, Runner runner)
    {
        var made = new StepCommand(step);
        var command = new Command(step.Verb, step.Help);
        foreach (var field in step.Fields)
        {
            made.Add(command, field);
        }

        return runner.Runs(command, made.Run);
    }

    string? IValueSource.Text(string name) => symbols.GetValueOrDefault(name) switch
    {
        Option<bool> flag => parsed!.GetValue(flag) ? "yes" : null,
        Option<string> option => parsed!.GetValue(option),
        Argument<string> argument => parsed!.GetValue(argument),
        _ => null,
    };

    Problem IValueSource.Missing(Field field) => TypingProblems.Missing(Place(field.Name), Quoted(field.Example));

    string ISpelling.Write(InputName input) => input.Value is { } value ? $"{Place(input.Name)} {Quoted(value)}" : Place(input.Name);

    string ISpelling.Write(Remedy remedy)
    {
        var other = StepTable.Find(remedy.Verb);
        return string.Join(' ', ["jarlabel", remedy.Verb, .. remedy.Values.Select(value => other?.Fields.FirstOrDefault(field => field.Name == value.Name) is { IsArgument: true }
            ? Quoted(value.Value ?? value.Name.ToUpperInvariant())
            : $"--{value.Name} {Quoted(value.Value ?? "")}".TrimEnd())]);
    }

    private void Add(Command command, Field field)
    {
        Symbol symbol = field switch
        {
            { IsArgument: true } => new Argument<string>(field.Name.ToUpperInvariant()) { Description = field.Help },
            { IsFlag: true } => new Option<bool>(Spelled(field)) { Description = field.Help },
            _ => new Option<string>(Spelled(field)) { Description = field.Help, HelpName = field.Kind },
        };
        symbols[field.Name] = symbol;
        if (symbol is Argument argument)
        {
            command.Add(argument);
        }
        else
        {
            command.Add((Option)symbol);
        }
    }

    private Result<Answer> Run(Typed typed, Session session)
    {
        parsed = typed.Parsed;
        var printing = PrintingOf();
        return PrintTo.Around(printing, session, () =>
            step.Do(session.Workbench, this).TryGet(out var outcome, out var faults)
                ? JarAnswer.Changed(session.Workbench, outcome)
                : Result<Answer>.Failed([.. faults.Select(fault => fault.In(this, Place))]));
    }

    private PrintRequest? PrintingOf()
    {
        IValueSource source = this;
        return source.Text("print-to") is { } to ? new PrintRequest(to, source.Text("sheet"), source.Text("design")) { Where = Place("print-to") } : null;
    }

    /// <summary>How a field is written; what is no field of the step stays as it is.</summary>
    private string Place(string name) => symbols.TryGetValue(name, out var symbol) ? symbol.Name : name;

    private string Spelled(Field field) => "--" + (field.Short is { } shorter && step.Fields.All(other => other.Name != shorter) ? shorter : field.Name);

    private static string Quoted(string value) => value.Contains(' ', StringComparison.Ordinal) ? $"\"{value}\"" : value;
}
