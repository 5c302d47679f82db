using System.Runtime.InteropServices;

namespace JarLabel.Core.Reading;

/// <summary>Finds members that stand twice in one object. The parser could refuse them itself, but it starts the system's cryptography
/// for that, which takes as long as everything else it does; and it does not say where.</summary>
internal static class DoubledMembers
{
    /// <summary>Objects of more members are looked at name by name.</summary>
    private const int MostCompared = 32;

    internal static void Refuse(JsonElement element, string where, string code, List<Problem> problems)
    {
        if (MayHave(element))
        {
            Tell(element, where, code, problems);
        }
    }

    /// <summary>False when there is certainly none: a quick look that allocates nothing, because nearly every file has none.</summary>
    private static bool MayHave(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            return MayHaveIn(element);
        }

        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
            {
                if (MayHave(item))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool MayHaveIn(JsonElement element)
    {
        if (element.GetPropertyCount() > MostCompared)
        {
            return true;
        }

        Span<int> hashes = stackalloc int[MostCompared];
        var seen = 0;
        foreach (var member in element.EnumerateObject())
        {
            var name = JsonMarshal.GetRawUtf8PropertyName(member);
            var hash = Hash(name);
            if (hashes[..seen].Contains(hash) || name.Contains((byte)'\\') || MayHave(member.Value))
            {
                return true;
            }

            hashes[seen++] = hash;
        }

        return false;
    }

    private static int Hash(ReadOnlySpan<byte> name)
    {
        var hash = 0;
        foreach (var part in name)
        {
            hash = unchecked((hash * 31) + part);
        }

        return hash;
    }

    private static void Tell(JsonElement element, string where, string code, List<Problem> problems)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var (index, item) in element.EnumerateArray().Index())
            {
                Tell(item, $"{where}/{index}", code, problems);
            }
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            TellIn(element, where, code, problems);
        }
    }

    private static void TellIn(JsonElement element, string where, string code, List<Problem> problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            if (!seen.Add(member.Name))
            {
                problems.Add(ReadingProblems.Doubled(code, $"{where}/{member.Name}"));
            }
            else
            {
                Tell(member.Value, $"{where}/{member.Name}", code, problems);
            }
        }
    }
}
