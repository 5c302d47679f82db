using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Hazards;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc hazards</c>: the classes of a mixture and everything a label says for them.</summary>
internal static class CalcHazardsCommand
{
    private static readonly Option<string> Contents = new("--contents") { Description = "Percent by weight: \"ethanol=90,methanol=5,water=5\", ranges as in \"methanol=30-60\", \"water=rest\".", HelpName = "contents" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("hazards", "Hazard classes, signal word, pictograms and phrases of a mixture.") { Contents }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var catalog = session.Workbench.Catalog;
        var mixtures = typed.Needed(Contents, "\"ethanol=90,methanol=5,water=5\"", (text, where) => ContentsText.Possible(text, catalog, where));
        return typed.Then<Answer>(() =>
        {
            var hazards = MixtureClassifier.Classify(mixtures, session.Workbench.Rules, catalog);
            var screen = new Screen().Title($"{hazards.SignalText ?? "No signal word"} · {string.Join(", ", hazards.ClassCodes)}").Gap()
                .Rows(hazards.Statements.Zip(hazards.StatementTexts(catalog), (_, text) => text).Select((text, i) => (i == 0 ? "says" : "", (string?)text)))
                .Rows(hazards.PoisonWording ? [("poison", PoisonWords.Text), ("", "with the skull and crossbones and the signal word (16 CFR 1500.14(b)(4))")] : [])
                .Rows(FirstAidWords.Of(hazards, session.Workbench.Settings.PoisonCenter).Select((text, i) => (i == 0 ? "first aid" : "", (string?)text)))
                .Rows(("pictograms", string.Join(", ", hazards.Pictograms)))
                .Gap().Rows(hazards.Why.Select((why, i) => (i == 0 ? "why" : "", (string?)why)))
                .Rows(hazards.Doubts.Select((doubt, i) => (i == 0 ? "doubt" : "", (string?)doubt)))
                .Rows(hazards.Unverified.Select((figure, i) => (i == 0 ? "unverified" : "", (string?)figure)));
            return Answer.Of(screen, new HazardsAnswerJson(HazardsJson.Of(hazards, session.Workbench.Settings.PoisonCenter)), c => c.HazardsAnswerJson);
        });
    }
}
