namespace JarLabel.Acceptance;

/// <summary>The program serving its pages; it is stopped at the end of the test.</summary>
internal sealed class ServedShop : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Process process;

    internal ServedShop(Process process)
    {
        this.process = process;
        Answer = JsonNode.Parse(process.StandardOutput.ReadLine() ?? throw new InvalidOperationException(process.StandardError.ReadToEnd()))!.AsObject();
    }

    /// <summary>What it said when it was ready.</summary>
    internal JsonObject Answer { get; }

    internal string Address => Answer["address"]!.GetValue<string>();

    /// <summary>Sends a signal, waits, and gives the exit code.</summary>
    internal int Stop(string signal)
    {
        using (var kill = Process.Start("kill", [signal, $"{process.Id}"]))
        {
            kill.WaitForExit();
        }

        Assert.True(process.WaitForExit(Patience), "The server did not end.");
        return process.ExitCode;
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            Stop("-TERM");
        }

        process.Dispose();
    }
}
