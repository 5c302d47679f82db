using System.Globalization;
using JarLabel.Benchmarks.StartUp;
using JarLabel.Core.Jars;

namespace JarLabel.Benchmarks.Ledgers;

/// <summary>Everyday commands, each a whole process, in a shop of very many jars and in one of a single jar, taking turns.</summary>
internal static class LedgerContest
{
    private const int Rounds = 15;

    internal static void Run(string program, int jars, bool usedUp)
    {
        var (few, many) = (Directory.CreateTempSubdirectory("jarlabel-few-"), Directory.CreateTempSubdirectory("jarlabel-many-"));
        try
        {
            foreach (var shop in (string[])[few.FullName, many.FullName])
                Mix(program, shop).Time();
            var events = ManyJars.AddTo(many.FullName, jars - 1, usedUp);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{jars} jars, {(usedUp ? "most of them used up," : "all on the shelf,")} and {events} events against one jar; median of {Rounds} runs, {Environment.ProcessorCount} processors"));
            foreach (var (name, words) in Everyday(jars))
                Print(name, () => Of(program, few.FullName, words(1)), () => Of(program, many.FullName, words(jars / 2)));
            Print("mix", () => Mix(program, few.FullName), () => Mix(program, many.FullName));
        }
        finally
        {
            few.Delete(recursive: true);
            many.Delete(recursive: true);
        }
    }

    private static (string Name, Func<int, string[]> Words)[] Everyday(int jars) =>
    [
        ("jar N", number => ["jar", number.ToString(CultureInfo.InvariantCulture)]),
        ("scan N", number => ["scan", JarNumber.From(number).ToString()]),
        ("shelf, the first page", _ => ["shelf", "--first", "40"]),
        ("shelf --shelf NAME, the first page", _ => ["shelf", "--shelf", "main", "--first", "40"]),
    ];

    private static Command Mix(string program, string shop) => Of(program, shop, ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--container", "500 mL"]);

    private static Command Of(string program, string shop, string[] words) => new(words[0], program, [.. words, "--shop", shop]);

    private static void Print(string name, Func<Command> few, Func<Command> many)
    {
        var (small, large) = (new List<double>(), new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            small.Add(few().Time());
            large.Add(many().Time());
        }

        var (one, all) = (small.Order().ElementAt(Rounds / 2), large.Order().ElementAt(Rounds / 2));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{one,7:0} ms {all,7:0} ms  {all / one,5:0.00} x   {name}"));
    }
}
