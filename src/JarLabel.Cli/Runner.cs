namespace JarLabel.Cli;

/// <summary>Ties a command's sentence in to its answer out.</summary>
internal sealed class Runner(Terminal terminal, TimeProvider clock)
{
    /// <summary>Where answers go.</summary>
    internal Terminal Terminal => terminal;

    /// <summary>Makes the command run: what was typed is read, the shop is opened, the answer is said.</summary>
    /// <param name="command">The command.</param>
    /// <param name="run">What it does.</param>
    /// <param name="fields">Its options and arguments by the identities of what they hold, where they have some.</param>
    /// <param name="faults">What is wrong with them, told beside what is wrong with the options of every command.</param>
    /// <param name="unread">True to open the shop without its own files, which may be what is wrong.</param>
    internal Command Runs(
        Command command,
        Func<ParsedLine, Session, Result<Answer>> run,
        IReadOnlyDictionary<string, Symbol>? fields = null,
        Func<ParsedLine, Session, IReadOnlyList<Problem>>? faults = null,
        bool unread = false)
    {
        var spelling = new LineSpelling(command, fields);
        command.SetAction(parsed =>
        {
            var typed = new ParsedLine(parsed);
            var answer = SharedOptions.Open(typed, clock, terminal.Progress, unread)
                .Then<Session>(opened => opened with { Status = terminal.Status })
                .Then(session => typed.Problems.Count > 0
                    ? Result<Answer>.Failed([.. typed.Problems, .. faults?.Invoke(typed, session) ?? []])
                    : run(typed, session).Then<Answer>(said => said.After(session.Workbench)));
            return terminal.Say(spelling.Of(answer), typed.Switch(SharedOptions.Json));
        });
        return command;
    }

    /// <summary>The same for a command that goes on, opens the shop again and again, and tells of it meanwhile.</summary>
    internal Command Stays(Command command, Func<ParsedLine, WorkbenchFactory, Terminal, Result<bool>> run)
    {
        var spelling = new LineSpelling(command);
        command.SetAction(parsed =>
        {
            var typed = new ParsedLine(parsed);
            var request = SharedOptions.Request(typed, clock);
            var factory = new WorkbenchFactory(request, () => SharedOptions.Now(new ParsedLine(parsed), clock));
            var ended = typed.Then(() => run(typed, factory, terminal));
            return ended.Ok ? Terminal.Done : terminal.Refuse(spelling.Tell(ended.Problems), typed.Switch(SharedOptions.Json));
        });
        return command;
    }
}
