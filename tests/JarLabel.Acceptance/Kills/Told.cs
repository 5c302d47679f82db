namespace JarLabel.Acceptance.Kills;

/// <summary>What a program that may have been killed said before: a step of a jar when its whole answer came out, else nothing.</summary>
internal static class Told
{
    /// <summary>The step that the program told as done; null when its answer is not whole.</summary>
    internal static (int Jar, int Revision)? Step(string said)
    {
        try
        {
            var jar = JsonNode.Parse(said)!["jar"];
            Assert.True(jar is not null, "It refused the step: " + said);
            return (jar["number"]!.GetValue<int>(), jar["revision"]!.GetValue<int>());
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
