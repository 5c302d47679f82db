using JarLabel.Cli;
using JarLabel.Store;

CommandMemory.Prepare();
FileSizeLimit.MakeAnError();
StandardStreams.Prepare();
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var terminal = Terminal.Console();
var kept = KeptWork.Watch();
string[] line = args.Length == 0 ? ["help"] : args;
try
{
    var parsed = CommandTree.Create(new Runner(terminal, TimeProvider.System), line).Parse(line, new() { ResponseFileTokenReplacer = null });
    return UnreadLine.Problems(parsed) is not { Count: > 0 } unread
        ? parsed.Invoke(new() { EnableDefaultExceptionHandler = false, Output = terminal.Result, Error = terminal.Errors })
        : terminal.Refuse(unread, parsed.GetValue(SharedOptions.Json));
}
catch (OutputFault fault)
{
    return terminal.Refuse([TypingProblems.NotSaid(fault.Message, kept.Words)], json: false);
}
catch (Exception fault) when (fault is not OutOfMemoryException)
{
    terminal.Errors.WriteLine($"This is a fault in jarlabel, not in what you typed. {kept.Words} Please report it with the line you typed:{Environment.NewLine}{fault}");
    return Terminal.OurFault;
}
