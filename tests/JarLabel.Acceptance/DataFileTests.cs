using JarLabel.Acceptance.Fuzz;

namespace JarLabel.Acceptance;

/// <summary>JSON files that the program reads, broken as disks and editors break them: told with the file and the place in it, and never a fault
/// of ours.</summary>
public sealed class DataFileTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    public static TheoryData<string, string, string[]> Files() => new()
    {
        { "shop.json", "{ \"name\": \"#\" }", ["shelf"] },
        { "calibration.json", "[ { \"sheet\": \"#\", \"shiftX\": 0, \"shiftY\": 0, \"scaleX\": 1, \"scaleY\": 1, \"measured\": \"2026-03-09\" } ]", ["check"] },
        { "catalog/grades.json", "[ { \"id\": \"#\" } ]", ["shelf"] },
        { "layouts/sheets/own.json", "{ \"id\": \"#\" }", ["sheets"] },
        { "layouts/labels/own.json", "{ \"id\": \"#\" }", ["designs"] },
        { "devices.json", "[ { \"id\": \"1\", \"name\": \"#\", \"paired\": \"2026-03-09T14:30:00\", \"tokenSha256\": \"00\" } ]", ["serve", "devices"] },
        { "job.json", "[ { \"for\": \"#\", \"area\": \"1 m2\", \"coats\": 1 } ]", ["plan", "job.json", "--grade", "garnet", "--solvent", "ethanol-95"] },
        { "all.jsonl", "{\"ledger\":\"a\",\"events\":1,\"seal\":\"b\"}\n{\"sequence\":1,\"subject\":\"#\"}\n", ["import", "all.jsonl"] },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void A_byte_that_is_no_utf8_and_half_a_character_are_told_with_the_file_and_the_byte(string name, string text, string[] line)
    {
        foreach (var (broken, told) in (IEnumerable<(byte[], string)>)[
            (Latin(text.Replace("#", "f\u00fcr", StringComparison.Ordinal)), "Read the byte 0xFC"),
            (Latin(text.Replace("#", "a\\ud800b", StringComparison.Ordinal)), "Read \\ud800, half a character"),
            (Latin(text.Replace("#", "\\ude00\\ud83d", StringComparison.Ordinal)), "Read \\ude00, half a character")])
        {
            Write(name, broken);
            var run = shop.Run(line);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(told, run.Errors, StringComparison.Ordinal);
            Assert.Contains(Path.GetFileName(name), run.Errors, StringComparison.Ordinal);
            Assert.Matches("byte [0-9]+: Read", run.Errors);
        }
    }

    [Fact]
    public void An_empty_a_deep_a_wide_and_a_long_file_are_refused()
    {
        byte[][] broken =
        [
            [], [0xFF, 0xFE, 0x7B, 0], Latin(new string('[', 100_000)), Latin("[" + new string(' ', 5 << 20) + "]"), [0xEF, 0xBB, 0xBF], Latin("null"), Latin("[null]"), Latin("[ 1e999 ]"),
            Latin("{\"a\":1,\"\\u0061\":2}"), Latin("[" + string.Join(',', Enumerable.Repeat("{}", 2000)) + "]"), [0x5B, 0x22, 0xC0, 0x80, 0x22, 0x5D],
        ];
        var cases = Files().SelectMany(file => broken.Select(bytes => (Name: file.Data.Item1, Line: file.Data.Item3, Bytes: bytes))).ToArray();
        var codes = ManyLines.Run(shop.Folder, [.. cases.Select((each, i) =>
        {
            var own = Path.Combine(shop.Folder, $"shop-{i}");
            Write(Path.Combine(own, each.Name), each.Bytes);
            return (string[][])[[.. each.Line.Select(word => word.Contains(".json", StringComparison.Ordinal) ? Path.Combine(own, word) : word), "--shop", own]];
        })]);
        Assert.All(codes.Zip(cases), each => Assert.True(each.First is [2], $"{each.Second.Name} of {each.Second.Bytes.Length} bytes: {each.First[0]}"));
    }

    /// <summary>A thousand million bytes take room on paper alone.</summary>
    [Fact]
    public void A_file_of_a_gigabyte_is_told_without_reading_it()
    {
        using (var file = File.Create(Path.Combine(shop.Folder, "shop.json")))
        {
            file.SetLength(1L << 30);
        }

        Assert.Contains("error JL404: shop.json: The file is longer than 4 MB", shop.Run("shelf").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Whole_characters_in_any_writing_are_read()
    {
        Write("shop.json", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("{ \"name\": \"\\u0041lder \\ud83c\\udfbb \\\\u d800 – für\" }")]);
        Assert.Contains("Alder", shop.Run("shop", "show").Result, StringComparison.Ordinal);
    }

    private void Write(string name, byte[] bytes)
    {
        var file = Path.Combine(shop.Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllBytes(file, bytes);
    }

    private static byte[] Latin(string text) => Encoding.Latin1.GetBytes(text);
}
