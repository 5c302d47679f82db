namespace JarLabel.Operations.Steps;

/// <summary>From a job to what to mix, what serves, what is missing and what to do.</summary>
internal static class PlanJobStep
{
    private static Input<string?> File => field ??= Input.Optional<string>("job", "Job file", "job.json", FileText.Read)
        .Help("file", "A JSON file of lines instead: [{ \"for\": \"pad\", \"area\": \"14 sq ft\", \"coats\": 8 }].")
        .Change(one => one with { IsArgument = true, IsOptional = true, IsTypedOnly = true });

    private static Input<IReadOnlyList<JobKind>> Kinds => field ??= Input.Many<JobKind>("for", "How it is put on", "pad", (_, text, where) => ValueReader.Choice(text, where, JobKind.ByWord))
        .Help("way", "How it is put on: wash, seal, pad, brush or spray; again for each line.").Hint("wash, seal, pad, brush or spray; several parted by semicolons: seal; pad");

    private static Input<IReadOnlyList<Area>> Areas => field ??= Input.Many<Area>("area", "What is covered", "14 sq ft", (_, text, where) => AreaText.Read(text, where))
        .Help("area", "What is covered: \"14 sq ft\", \"1.3 m2\"; one for each --for.").Hint("one for each: 14 sq ft; 1.3 m2");

    private static Input<IReadOnlyList<int>> Coats => field ??= Input.Many<int>("coats", "Coats", "8", (_, text, where) => ValueReader.WholeNumber(1, JobLine.MostCoats)(text, where))
        .Help("number", "How many coats; one for each --for.").Hint("one for each: 1; 8");

    private static Input<IReadOnlyList<PoundCut>> Cuts => field ??= Input.Many<PoundCut>("cut", "Cuts", "1.5", (_, text, where) => CutText.Read(text, where))
        .Help("cut", "The cut, for each --for; else 1 lb to wash and seal, 1 1/2 to pad and brush, 3 to spray.").Hint("the usual ones when left empty").More();

    private static Input<double?> Waste => field ??= Input.Optional<double>("waste", "Lost, %", "15", ValueReader.Percent(0, 100 * JobLine.MostWaste, 15).Invoke)
        .Help("percent", "What is lost, per cent of what comes onto the wood; else 10 to 15, to spray 120 (55 % of what is sprayed misses the wood): guesses.").Hint("the usual when left empty").More();

    private static Input<Length> Spread => field ??= Input.Or("spread", "How far a coat spreads", JobLine.UsualSpread, SpreadText.Read, SpreadText.Read(JobLine.UsualSpread, "spread").Require())
        .Help("spread", $"How far a coat spreads; else \"{JobLine.UsualSpread}\", a guess.").Hint($"{JobLine.UsualSpread} when left empty, a guess").More();

    private static Input<IReadOnlyList<JobLine>> Lines => field ??= Input.Group<IReadOnlyList<JobLine>>([File, Kinds, Areas, Coats, Cuts, Waste, Spread], ReadLines);

    private static Input<Grade> Grade => field ??= Shared.Grade.Help("id", "The flakes: garnet, blonde, ... or one of the shop's own.");

    private static Input<Duration> Over => field ??= Input.Or("over", "A coat dries in", "1 h", TimeText.Read, NoticeRequest.UsualOver)
        .Help("time", "How long a coat takes to dry: \"1 h\" (the default).").Hint("1 h when left empty").More();

    private static Input<string?> Out => field ??= Shared.Out("Also write one sheet for the bench, with boxes to tick: a .pdf, .svg or .png file.");

    internal static Step Step => field ??= Step.OfShop("plan", "Plan a job", "From a job to what to mix: volumes, jars that serve, what is missing, steps, air.",
        [Lines, Grade, Shared.Solvent, Shared.Temperature, Shared.WorkRoom, Over, Shared.Calendar, Out, Shared.DrawingPaper, Shared.Force], Do) with
    { Looks = true, Example = [new("for", "pad"), new("area", "14 sq ft"), new("coats", "8"), new("grade", "garnet"), new("solvent", "ethanol-95")] };

    private static Result<IReadOnlyList<JobLine>> ReadLines(Values given)
    {
        var (file, kinds) = (given.Get(File), given.Get(Kinds));
        if (file is not null && kinds.Count > 0)
        {
            return TypingProblems.OneOfTwo("job", "for");
        }

        if (file is not null)
        {
            return JobFile.Read(file);
        }

        if (kinds.Count == 0)
        {
            return PlanProblems.NoJob();
        }

        var (areas, coats, cuts) = (given.Get(Areas), given.Get(Coats), given.Get(Cuts));
        Problem[] uneven =
        [
            .. ((IEnumerable<(string Name, int Count)>)[("area", areas.Count), ("coats", coats.Count), ("cut", cuts.Count == 0 ? kinds.Count : cuts.Count)])
                .Where(one => one.Count != kinds.Count).Select(one => PlanProblems.UnevenLines(one.Name, one.Count, kinds.Count)),
        ];
        return uneven.Length > 0
            ? Result<IReadOnlyList<JobLine>>.Failed(uneven)
            : Result<IReadOnlyList<JobLine>>.Of([.. kinds.Select((kind, i) => new JobLine(
                kind, areas[i], coats[i], cuts.Count > 0 ? cuts[i] : kind.UsualCut, given.Get(Spread), given.Get(Waste) / 100 ?? kind.UsualWaste))]);
    }

    private static Result<Outcome> Do(Values given)
    {
        var bench = given.Bench;
        var request = new PlanRequest(
            given.Get(Lines),
            given.Get(Grade),
            given.Get(Shared.Solvent),
            given.Get(Shared.WorkRoom),
            given.Get(Over),
            given.Get(Shared.Temperature),
            given.Get(Shared.Calendar));
        if (!PlanJob.Do(bench, request).TryGet(out var job, out var faults))
        {
            return faults;
        }

        var sheet = given.Get(Out);
        return sheet is not null && !DrawPlan.Do(bench, job, sheet, given.Get(Shared.DrawingPaper)).TryGet(out _, out faults)
            ? faults
            : new Outcome(PlanAnswer.Of(bench, job, sheet));
    }
}
