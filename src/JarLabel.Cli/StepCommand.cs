using JarLabel.Cli.Commands;
using JarLabel.Printing;

namespace JarLabel.Cli;

/// <summary>A declared step as a command: its options and arguments, and their help.</summary>
internal sealed class StepCommand : IValueSource
{
    private readonly Step step;
    private readonly Dictionary<string, Symbol> symbols = [];
    private readonly Dictionary<string, Argument<string>> alone = [];
    private ParseResult? parsed;

    private StepCommand(Step step) => this.step = step;

    /// <summary>The command.</summary>
    internal static Command Of(Step step, Runner runner)
    {
        var made = new StepCommand(step);
        var command = new Command(step.Verb.Split(' ')[^1], step.Help);
        foreach (var field in step.Fields)
        {
            made.Add(command, field);
        }

        return runner.Runs(command, made.Run, made.symbols, made.Faults, step.ReadsShopFiles);
    }

    IReadOnlyList<string> IValueSource.Texts(string name) => symbols.GetValueOrDefault(name) switch
    {
        Option<bool> flag => parsed!.GetValue(flag) ? ["yes"] : [],
        Option<string> option => [.. One(parsed!.GetValue(option)), .. Alone(name)],
        Option<string[]> options => [.. parsed!.GetValue(options) ?? [], .. Alone(name)],
        Argument<string> argument => One(parsed!.GetValue(argument)),
        Argument<string[]> arguments => parsed!.GetValue(arguments) ?? [],
        _ => [],
    };

    bool IValueSource.IsAtTheMachine => true;

    IReadOnlyList<string> IValueSource.Lines() => Terminal.TypedLines();

    Problem IValueSource.Missing(Field field) => TypingProblems.Missing(field.Name, field.Example);

    private void Add(Command command, Field field)
    {
        if (OfEvery(field.Name) is { } shared)
        {
            // Every command knows it already; here it is settled, too.
            symbols[field.Name] = shared;
            return;
        }

        Symbol symbol = field switch
        {
            { IsArgument: true, IsMany: true } => new Argument<string[]>(field.Name.ToUpperInvariant()) { Description = field.Help, Arity = field.IsOptional ? ArgumentArity.ZeroOrMore : ArgumentArity.OneOrMore },
            { IsArgument: true, IsOptional: true } => new Argument<string>(field.Name.ToUpperInvariant()) { Description = field.Help, Arity = ArgumentArity.ZeroOrOne },
            { IsArgument: true } => new Argument<string>(field.Name.ToUpperInvariant()) { Description = field.Help },
            { IsFlag: true } when field == Shared.Force.Field => SharedOptions.Force,
            { IsFlag: true } => new Option<bool>(CommandLine.Option(step, field)) { Description = field.Help },
            { IsMany: true } => new Option<string[]>(CommandLine.Option(step, field)) { Description = field.Help, HelpName = field.Kind },
            _ => new Option<string>(CommandLine.Option(step, field)) { Description = field.Help, HelpName = field.Kind },
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

        if (field.MayStandAlone)
        {
            command.Add(alone[field.Name] = new Argument<string>(field.Name.ToUpperInvariant()) { Description = $"The same as {symbol.Name}.", Arity = ArgumentArity.ZeroOrOne });
        }
    }

    private Result<Answer> Run(ParsedLine typed, Session session)
    {
        parsed = typed.Parsed;
        if (alone.Keys.Where(name => symbols[name] is Option<string>).Select(name => (Name: name, Texts: ((IValueSource)this).Texts(name))).FirstOrDefault(said => said.Texts.Count > 1) is { Name: { } twice, Texts: [var one, var other] })
        {
            return TypingProblems.SaidTwice(twice, one, other);
        }

        if (step.Printing(session.Workbench, this) is not { } printing)
        {
            return Do(session);
        }

        if (((IValueSource)this).Text("out") is { } file && !Path.GetExtension(file).Equals(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            return PrintingProblems.OnlyPdf(file);
        }

        return PrintTo.Around(printing, session, () => Do(session));
    }

    /// <summary>What is wrong with the step's own fields, beside what is wrong with those of every command.</summary>
    private IReadOnlyList<Problem> Faults(ParsedLine typed, Session session)
    {
        parsed = typed.Parsed;
        return [.. step.Faults(session.Workbench, this).Where(fault => fault.Where is not { } where || OfEvery(where) is null)];
    }

    /// <summary>The option of every command that has this name; null for none.</summary>
    private static Option? OfEvery(string name)
    {
        var spelled = CommandLine.Option(name);
        return SharedOptions.All.FirstOrDefault(known => known.Name == spelled);
    }

    private Result<Answer> Do(Session session)
    {
        if (step.Do(session.Workbench, this).TryGet(out var outcome, out var faults))
        {
            return outcome.Answer;
        }

        // Where much is missing, one whole line says more than each by itself.
        return Result<Answer>.Failed(faults.Count(fault => fault.Code == TypingProblems.NotGiven) < 2 ? faults : [.. faults, TypingProblems.WholeLine(new Remedy(step.Verb, step.Example))]);
    }

    private IReadOnlyList<string> Alone(string name) => alone.TryGetValue(name, out var argument) ? One(parsed!.GetValue(argument)) : [];

    private static IReadOnlyList<string> One(string? text) => text is null ? [] : [text];
}
