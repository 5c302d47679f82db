using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Air;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary>A spell of finishing, said either way: the alcohol that goes into the air, or cut, coats and area of the job.</summary>
internal sealed class SpellOptions
{
    private readonly Option<string> evaporate = new("--evaporate") { Description = "Alcohol that goes into the air: \"250 mL\".", HelpName = "volume" };
    private readonly Option<string> cut = new("--cut") { Description = "Instead: the cut that is laid on, with --coats and --area.", HelpName = "cut" };
    private readonly Option<string> coats = new("--coats") { Description = "How many coats.", HelpName = "number" };
    private readonly Option<string> area = new("--area") { Description = "What is covered: \"14 sq ft\", \"1.3 m2\".", HelpName = "area" };
    private readonly Option<string> spread = new("--spread") { Description = $"How far it spreads; \"{CalcCoverageCommand.UsualSpread}\" unless said, a guess: coats differ much.", HelpName = "spread" };

    internal void AddTo(Command command)
    {
        foreach (var option in (Option[])[evaporate, cut, coats, area, spread])
        {
            command.Add(option);
        }
    }

    /// <summary>The alcohol that goes into the air.</summary>
    internal Volume Read(Typed typed)
    {
        var job = ((Option<string>[])[cut, coats, area, spread]).Any(o => typed.Text(o) is not null);
        if (job == typed.Text(evaporate) is not null)
        {
            typed.Refuse(TypingProblems.OneSpell(both: job));
            return default;
        }

        return job ? OfJob(typed) : typed.Needed(evaporate, "\"250 mL\"", VolumeText.Read);
    }

    private Volume OfJob(Typed typed)
    {
        var laidOn = typed.Needed(cut, "2", CutText.Read);
        var times = typed.Needed(coats, "3", Words.WholeNumber(1, 1000));
        var surface = typed.Needed(area, "\"14 sq ft\"", AreaText.Read);
        var wet = typed.Value(spread, SpreadText.Read) ?? SpreadText.Read(CalcCoverageCommand.UsualSpread, spread.Name).Require();
        return times == 0 ? default : new FinishingSession(surface, times, Volume.FromLiters(1) / wet, laidOn).Evaporated;
    }
}
