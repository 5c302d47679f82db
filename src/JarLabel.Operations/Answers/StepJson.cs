namespace JarLabel.Operations.Answers;

/// <summary>A step for a program: the event as the ledger keeps it, with what to add or take at the front.</summary>
internal static class StepJson
{
    internal static JsonObject Of(JarEvent happened)
    {
        var step = new JsonObject();
        foreach (var (name, value) in Amounts(happened))
        {
            step[name] = value;
        }

        foreach (var (name, value) in JsonNode.Parse(JarEventJson.Write(happened))!.AsObject())
        {
            step[name] = value?.DeepClone();
        }

        return step;
    }

    private static (string Name, JsonNode Value)[] Amounts(JarEvent happened) => happened switch
    {
        Thinned t => [("addMilliliters", t.Added.Poured.Milliliters), ("addGrams", t.Added.Weight.Grams)],
        Thickened t => [("addGrams", t.Added.Weight.Grams)],
        Used u => [("takeMilliliters", u.Taken.Liquid.Milliliters)],
        _ => [],
    };
}
