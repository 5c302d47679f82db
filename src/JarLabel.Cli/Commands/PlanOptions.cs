using System.CommandLine;
using JarLabel.Bench.Planning;
using JarLabel.Cli.Typing;
using JarLabel.Core.Planning;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say what a job is: lines that are typed, or a file of them.</summary>
internal sealed class PlanOptions
{
    private readonly Argument<string?> file = new("JOB") { Description = "A JSON file of lines instead: [{ \"for\": \"pad\", \"area\": \"14 sq ft\", \"coats\": 8 }].", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string[]> kinds = new("--for") { Description = "How it is put on: wash, seal, pad, brush or spray; again for each line.", HelpName = "way" };
    private readonly Option<string[]> areas = new("--area") { Description = "What is covered: \"14 sq ft\", \"1.3 m2\"; one for each --for.", HelpName = "area" };
    private readonly Option<string[]> coats = new("--coats") { Description = "How many coats; one for each --for.", HelpName = "number" };
    private readonly Option<string[]> cuts = new("--cut") { Description = "The cut, for each --for; else 1 lb to wash and seal, 1 1/2 to pad and brush, 3 to spray.", HelpName = "cut" };
    private readonly Option<string> waste = new("--waste") { Description = "What is lost, per cent of what comes onto the wood; else 10 to 15, to spray 120 (55 % of what is sprayed misses the wood): guesses.", HelpName = "percent" };
    private readonly Option<string> spread = new("--spread") { Description = $"How far a coat spreads; else \"{JobLine.UsualSpread}\", a guess.", HelpName = "spread" };

    internal void AddTo(Command command)
    {
        command.Add(file);
        foreach (var option in (Option[])[kinds, areas, coats, cuts, waste, spread])
        {
            command.Add(option);
        }
    }

    internal IReadOnlyList<JobLine> Read(Typed typed)
    {
        var (named, typedKinds) = (typed.Text(file), typed.Texts(kinds));
        if (named is not null && typedKinds.Count > 0)
        {
            typed.Refuse(TypingProblems.OneOfTwo("JOB", kinds.Name));
            return [];
        }

        if (named is not null)
        {
            return typed.Take(Typed.Full(named, file.Name).Then(JobFile.Read), out var lines) ? lines! : [];
        }

        if (typedKinds.Count == 0)
        {
            typed.Refuse(PlanProblems.NoJob());
            return [];
        }

        return Even(typed, areas, typedKinds.Count) & Even(typed, coats, typedKinds.Count) & (typed.Texts(cuts).Count == 0 || Even(typed, cuts, typedKinds.Count))
            ? [.. typedKinds.Select((kind, i) => Line(typed, kind, i)).OfType<JobLine>()]
            : [];
    }

    private JobLine? Line(Typed typed, string kindText, int i)
    {
        var wet = typed.Value(spread, SpreadText.Read) ?? SpreadText.Read(JobLine.UsualSpread, spread.Name).Require();
        var lost = typed.Value(waste, Words.Number(0, 100 * JobLine.MostWaste, 15)) / 100;
        var cutText = typed.Texts(cuts).ElementAtOrDefault(i);
        var known = typed.Take(Words.Choice(kindText, kinds.Name, JobKind.ByWord), out var kind);
        known &= typed.Take(AreaText.Read(typed.Texts(areas)[i], areas.Name), out var area);
        known &= typed.Take(Words.WholeNumber(1, JobLine.MostCoats)(typed.Texts(coats)[i], coats.Name), out var times);
        PoundCut? cut = cutText is not null && typed.Take(CutText.Read(cutText, cuts.Name), out var read) ? read : null;
        return known ? new JobLine(kind!, area, times, cut ?? kind!.UsualCut, wet, lost ?? kind!.UsualWaste) : null;
    }

    private static bool Even(Typed typed, Option<string[]> option, int wanted)
    {
        var given = typed.Texts(option).Count;
        if (given != wanted)
        {
            typed.Refuse(PlanProblems.UnevenLines(option.Name, given, wanted));
        }

        return given == wanted;
    }
}
