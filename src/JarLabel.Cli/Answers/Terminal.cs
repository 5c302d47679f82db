using System.Text.Json;

namespace JarLabel.Cli.Answers;

/// <summary>The only place that knows the console: results to one stream, errors to the other.</summary>
/// <param name="Result">Standard output.</param>
/// <param name="Errors">Standard error.</param>
/// <param name="Styled">True on a terminal that may show weight, colour and typography.</param>
internal sealed record Terminal(TextWriter Result, TextWriter Errors, bool Styled)
{
    /// <summary>Exit code when all went well.</summary>
    internal const int Done = 0;

    /// <summary>Exit code when the input has to be mended.</summary>
    internal const int MendInput = 2;

    /// <summary>Exit code when the fault is ours.</summary>
    internal const int OurFault = 3;

    /// <summary>The console of this process. Plain text for a pipe or with NO_COLOR set.</summary>
    internal static Terminal Console() => new(
        Plain(PlainOutput.Answers) ?? System.Console.Out,
        Plain(PlainOutput.Errors) ?? System.Console.Error,
        !System.Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")))
    {
        Live = !System.Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
    };

    private static StreamWriter? Plain(int number) => OperatingSystem.IsLinux()
        ? new StreamWriter(new PlainOutput(number), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true }
        : null;

    /// <summary>True when errors go to a terminal, where a line can be written over.</summary>
    internal bool Live { get; init; }

    /// <summary>A line that tells how far a long piece of work is.</summary>
    internal Action<int, int> Progress(string what) => Live ? new ProgressLine(Errors, what).Tell : (_, _) => { };

    /// <summary>One line that says what is being waited for; null clears it.</summary>
    internal void Status(string? what)
    {
        if (Live)
        {
            Errors.Write(what is null ? "\r\e[K" : $"\r  {what}\e[K");
            Errors.Flush();
        }
    }

    /// <summary>The lines that a hand or a hand scanner types, without the empty ones.</summary>
    internal static IReadOnlyList<string> TypedLines()
    {
        var lines = new List<string>();
        while (System.Console.In.ReadLine() is { } line)
        {
            lines.Add(line.Trim());
        }

        return [.. lines.Where(line => line.Length > 0)];
    }

    /// <summary>Writes an answer, as text or as one JSON object.</summary>
    internal int Say(Result<Answer> answer, bool json)
    {
        if (!answer.TryGet(out var said, out var problems))
        {
            return Refuse(problems, json);
        }

        foreach (var warning in json ? said.Warnings : [])
        {
            Errors.WriteLine($"caution {warning.Code}: {PlainAscii.Of(warning.Message)}");
        }

        if (json)
        {
            Result.WriteLine(said.Json());
        }
        else
        {
            Write(said);
        }

        return said.Failures.Count == 0 ? Done : Complain(said.Failures);
    }

    /// <summary>Writes problems.</summary>
    internal int Refuse(IReadOnlyList<Problem> problems, bool json)
    {
        if (json)
        {
            Result.WriteLine(JsonSerializer.Serialize(new ProblemsJson(problems), AnswerContext.Default.ProblemsJson));
        }

        return Complain(problems);
    }

    private int Complain(IReadOnlyList<Problem> problems)
    {
        foreach (var problem in problems)
        {
            Errors.WriteLine($"error {problem.Code}: {(problem.Where is { } where ? where + ": " : "")}{problem.Message}");
        }

        return MendInput;
    }

    private void Write(Answer said)
    {
        var cautions = new Screen();
        foreach (var warning in said.Warnings)
        {
            cautions.Caution(warning.Message);
        }

        ScreenLine[] lines = [.. said.Screen.Lines];
        var last = Array.FindLastIndex(lines, l => l.Style == LineStyle.Next);
        var cut = last < 1 ? lines.Length : last - 1;
        var text = new StringBuilder();
        IEnumerable<ScreenLine> gap = said.Warnings.Count > 0 ? new Screen().Gap().Lines : [];
        foreach (var line in lines.Take(cut).Concat(gap).Concat(cautions.Lines).Concat(lines.Skip(cut)))
        {
            text.AppendLine(Styled ? Paint(line) : Prefixed(line.Spelled));
        }

        Result.Write(text.ToString());
    }

    private static string Paint(ScreenLine line) => line.Style switch
    {
        LineStyle.Title => $"\e[1m{line.Text}\e[0m",
        LineStyle.Header => $"\e[2m{line.Text}\e[0m",
        LineStyle.Caution => $"\e[33m{Prefixed(line)}\e[0m",
        LineStyle.Soon => $"\e[33m{line.Text}\e[0m",
        LineStyle.Over => $"\e[31m{line.Text}\e[0m",
        LineStyle.Next => $"\e[2m{Prefixed(line)}\e[0m",
        _ => line.Text,
    };

    private static string Prefixed(ScreenLine line) => line.Style switch
    {
        LineStyle.Caution => "  caution: " + line.Text,
        LineStyle.Next => "Next: " + line.Text,
        _ => line.Text,
    };
}
