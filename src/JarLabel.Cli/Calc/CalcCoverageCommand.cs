using System.CommandLine;
using System.Globalization;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc coverage</c>: liquid, flakes and dry film of a job.</summary>
internal static class CalcCoverageCommand
{
    internal const string UsualSpread = "400 sqft/gal";

    private static readonly Option<string> Cut = new("--cut") { Description = "The cut.", HelpName = "cut" };
    private static readonly Option<string> Area = new("--area") { Description = "What is covered: \"14 sq ft\", \"1.3 m2\".", HelpName = "area" };
    private static readonly Option<string> Coats = new("--coats") { Description = "How many coats.", HelpName = "number" };
    private static readonly Option<string> Spread = new("--spread") { Description = $"How far it spreads; \"{UsualSpread}\" unless said, a guess: coats differ much.", HelpName = "spread" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("coverage", "Liquid, flakes and dry film of a job.") { Cut, Area, Coats, Spread }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var cut = typed.Needed(Cut, "2", CutText.Read);
        var area = typed.Needed(Area, "\"14 sq ft\"", AreaText.Read);
        var coats = typed.Needed(Coats, "3", Words.WholeNumber(1, 1000));
        var wet = typed.Value(Spread, SpreadText.Read) ?? SpreadText.Read(UsualSpread, Spread.Name).Require();
        return typed.Then(() => Measurable.Demand(Coverage.Of(cut, area, coats, wet))).Then<Answer>(job =>
        {
            var (metric, film) = (session.Workbench.Metric, job.DryCoat.Micrometers);
            return Answer.Of(
                new Screen().Title($"{coats} coats of {CutWords.Of(cut)}").Gap().Rows(
                    ("liquid", BenchAmount.Both(job.Liquid, metric)),
                    ("flakes in it", BenchAmount.Both(job.Flakes, metric)),
                    ("dry film a coat", string.Create(CultureInfo.InvariantCulture, $"{film:0.#} µm ({film / 25.4:0.00} mil)"))),
                new CoverageAnswerJson(job.Liquid.Milliliters, film, job.Flakes.Grams),
                c => c.CoverageAnswerJson);
        });
    }
}
