namespace JarLabel.Core.Labels;

/// <summary>What is said of rags. A French polisher's pad holds a drop of drying oil, and rags with drying oil heat by themselves.</summary>
internal static class RagWords
{
    /// <summary>For every bench.</summary>
    internal const string AtTheBench = "Spread alcohol rags singly outdoors to dry. Rags with drying oil heat by themselves: flat outdoors, or under water in a closed metal can.";

    /// <summary>Parts of words that tell of work with a pad and oil, here and in neighbouring languages. Too many rather than too few: the line harms nobody.</summary>
    private static readonly string[] Polishing = ["polish", "polit", "polier", "french", "padd", "fadd", "rubber", "bodying", "glaz", "spirit", "muneca", "muñeca", "tampon"];

    /// <summary>The same as whole words: padauk is a wood.</summary>
    private static readonly string[] Tools = ["pad", "pads", "fad", "oil", "oiled"];

    /// <summary>For a label, the most telling first; none where the job is no French polishing.</summary>
    internal static string[] ForLabel(string? job) => IsFrenchPolishing(job)
        ? ["Oily rags heat by themselves and burn: dry flat outdoors, or under water in a closed metal can.", "Oily rags burn by themselves: flat outdoors, or under water."]
        : [];

    internal static bool IsFrenchPolishing(string? job) => job is not null && job
        .Split((char[])[' ', ',', ';', '.', ':', '-', '/', '(', ')', '\''], StringSplitOptions.RemoveEmptyEntries)
        .Any(word => Tools.Contains(word, StringComparer.OrdinalIgnoreCase) || Array.Exists(Polishing, stem => word.Contains(stem, StringComparison.OrdinalIgnoreCase)));
}
