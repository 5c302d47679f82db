namespace JarLabel.Tests.Layout.Fuzz;

/// <summary>Designs as nobody would draw them: boxes in boxes, of any kind, in any size, with and without leave to be dropped.</summary>
internal sealed class RandomDesigns(Random random)
{
    private int boxes;

    internal Design Next()
    {
        boxes = 0;
        var json = $$"""
            {
              "id": "own", "title": "own", "shape": "rectangle", "width": {{random.Next(20, 110)}}, "height": {{random.Next(15, 110)}}, "inset": 2, "source": "practice",
              "voices": [{ "name": "big", "face": "bold", "sizes": [40, 28, 20, 14, 9] }, { "name": "small", "face": "regular", "sizes": [9, 7, 5.5] }],
              "box": {{Stack(0)}}
            }
            """;
        return DesignReader.Read("own.json", Encoding.UTF8.GetBytes(json)).Require();
    }

    private string Stack(int depth)
    {
        var inside = string.Join(',', Enumerable.Range(0, random.Next(1, 5)).Select(_ => depth < 3 && random.Next(3) == 0 ? Stack(depth + 1) : Leaf()));
        return $$"""{ "kind": "{{(random.Next(2) == 0 ? "rows" : "columns")}}", "gap": {{Figure(random.NextDouble() * 2)}}{{Frame()}}, "boxes": [{{inside}}] }""";
    }

    private string Leaf()
    {
        var name = $"\"name\": \"box{boxes++}\"";
        return random.Next(8) switch
        {
            0 => $$"""{ "kind": "qr", {{name}}, "module": 0.51, "leastModule": 0.42{{Frame()}} }""",
            1 => $$"""{ "kind": "tone", {{name}}, "side": 1.5{{Frame()}} }""",
            2 => $$"""{ "kind": "symbols", {{name}}, "sizes": [16, 12, 8]{{Frame()}} }""",
            3 => $$"""{ "kind": "list", {{name}}, "list": "{{Pick(Vocabulary.Lists)}}", "voice": "small", "running": {{(random.Next(2) == 0 ? "true" : "false")}}{{Frame()}} }""",
            4 => $$"""{ "kind": "table", {{name}}, "table": "{{Pick(Vocabulary.Tables)}}", "voice": "small", "columns": [{}, {}]{{Frame()}} }""",
            5 => $$"""{ "kind": "figure", {{name}}, "word": "cut", "voice": "big"{{Frame()}} }""",
            _ => $$"""{ "kind": "text", {{name}}, "word": "{{Pick(Vocabulary.Words)}}", "voice": "{{Pick(["big", "small"])}}", "lines": {{random.Next(1, 4)}}{{Frame()}} }""",
        };
    }

    private string Frame()
    {
        var members = new StringBuilder();
        if (random.Next(3) == 0)
            members.Append(CultureInfo.InvariantCulture, $", \"drop\": {random.Next(1, 9)}");
        if (random.Next(3) == 0)
            members.Append(", \"grow\": 1");
        if (random.Next(8) == 0)
            members.Append(CultureInfo.InvariantCulture, $", \"width\": {random.Next(3, 60)}");
        return members.ToString();
    }

    private T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];

    private static string Figure(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
