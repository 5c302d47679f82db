using System.Security.Cryptography;

namespace JarLabel.Tests.Store;

/// <summary>The seals of events computed once more, as the rule in <c>EventChain</c> has it: for tests of what somebody wrote who knows the rule.</summary>
internal static class EventSeal
{
    /// <summary>The seal before the first event.</summary>
    internal static byte[] Start => new byte[32];

    /// <summary>The seal of an event after another seal.</summary>
    internal static byte[] Next(byte[] before, long sequence, int number, int revision, string subject, string at, string kind, string body)
    {
        using var hashed = new MemoryStream();
        using var writer = new BinaryWriter(hashed);
        writer.Write(before);
        writer.Write(sequence);
        writer.Write(number);
        writer.Write(revision);
        Array.ForEach([subject, at, kind, body], writer.Write);
        writer.Flush();
        return SHA256.HashData(hashed.ToArray());
    }

    /// <summary>Changes an exported file and seals it anew, so that only what it says can betray it.</summary>
    internal static void Change(string file, Func<string, string> change)
    {
        var lines = change(File.ReadAllText(file)).TrimEnd('\n').Split('\n');
        var seal = Start;
        for (var i = 1; i < lines.Length; i++)
        {
            using var line = JsonDocument.Parse(lines[i]);
            string Text(string name) => line.RootElement.GetProperty(name).GetString()!;
            int Number(string name) => line.RootElement.GetProperty(name).GetInt32();
            seal = Next(seal, Number("sequence"), Number("number"), Number("revision"), Text("subject"), Text("at"), Text("kind"), line.RootElement.GetProperty("body").GetRawText());
            lines[i] = lines[i].Replace(Text("seal"), Convert.ToHexStringLower(seal), StringComparison.Ordinal);
        }

        using var head = JsonDocument.Parse(lines[0]);
        lines[0] = lines[0].Replace(head.RootElement.GetProperty("seal").GetString()!, Convert.ToHexStringLower(seal), StringComparison.Ordinal);
        File.WriteAllText(file, string.Join('\n', lines) + "\n");
    }
}
