using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc blend</c>: several liquids poured together.</summary>
internal static class CalcBlendCommand
{
    private static readonly Option<string[]> Jar = new("--jar") { Description = "A part as volume@cut, such as \"200 mL@2\"; give it once for each part.", HelpName = "volume@cut" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("blend", "Cut and volume of several liquids poured together.") { Jar }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var parts = new List<(Volume, PoundCut)>();
        foreach (var text in typed.Texts(Jar))
        {
            if (typed.Take(ReadPart(text), out var part))
            {
                parts.Add(part);
            }
        }

        return typed.Then(() => Blend.Solve(parts).Then<Answer>(blend => Answer.Of(
            new Screen().Title(CutWords.Of(blend.Cut)).Gap().Rows(("makes", BenchAmount.Both(blend.Makes, session.Workbench.Metric))),
            new BlendAnswerJson(blend.Makes.Milliliters, blend.Cut.PoundsPerUsGallon),
            c => c.BlendAnswerJson)));
    }

    private static Result<(Volume, PoundCut)> ReadPart(string text) => text.Split('@') is [var volume, var cut]
        ? VolumeText.Read(volume, Jar.Name).Then(v => CutText.Read(cut, Jar.Name).Then<(Volume, PoundCut)>(c => (v, c)))
        : TypingProblems.NotAPart(text, Jar.Name);
}
