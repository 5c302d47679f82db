using System.Text.Json;

namespace JarLabel.Core.Jars;

/// <summary>An event as the ledger and an export keep it: one JSON object, units in the names or stated with the member, invariant.</summary>
public static class JarEventJson
{
    /// <summary>One line of JSON.</summary>
    public static string Write(JarEvent happened) => JsonSerializer.Serialize(happened, JarEventContext.Default.JarEvent);

    /// <summary>The event, or what is wrong with the text.</summary>
    /// <param name="json">What <see cref="Write"/> made.</param>
    /// <param name="where">The place it came from, for the message.</param>
    public static Result<JarEvent> Read(string json, string where)
    {
        try
        {
            return JsonSerializer.Deserialize(json, JarEventContext.Default.JarEvent) is { } happened ? happened : JarProblems.NotAnEvent(json, "null", where);
        }
        catch (Exception fault) when (fault is JsonException or NotSupportedException or ArgumentException)
        {
            return JarProblems.NotAnEvent(json, fault.Message, where);
        }
    }
}
