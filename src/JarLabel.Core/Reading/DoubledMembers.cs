using System.Text.Json;

namespace JarLabel.Core.Reading;

/// <summary>Finds members that stand twice in one object. The parser could refuse them itself, but it starts the system's cryptography
/// for that, which takes as long as everything else it does; and it does not say where.</summary>
internal static class DoubledMembers
{
    internal static void Refuse(JsonElement element, string where, string code, List<Problem> problems)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var (index, item) in element.EnumerateArray().Index())
            {
                if (item.ValueKind is JsonValueKind.Array or JsonValueKind.Object)
                {
                    Refuse(item, $"{where}/{index}", code, problems);
                }
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            RefuseIn(element, where, code, problems);
        }
    }

    private static void RefuseIn(JsonElement element, string where, string code, List<Problem> problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            if (!seen.Add(member.Name))
            {
                problems.Add(ReadingProblems.Doubled(code, $"{where}/{member.Name}"));
            }
            else if (member.Value.ValueKind is JsonValueKind.Array or JsonValueKind.Object)
            {
                Refuse(member.Value, $"{where}/{member.Name}", code, problems);
            }
        }
    }
}
