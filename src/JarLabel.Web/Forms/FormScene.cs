namespace JarLabel.Web.Forms;

/// <summary>A form as it stands: what it is for, what was filled in, what came of it.</summary>
/// <param name="Form">The form.</param>
/// <param name="Bench">The shop.</param>
/// <param name="History">The jar; null for a new one.</param>
/// <param name="Token">The mark that it is ours.</param>
/// <param name="Key">Its own key, under which it is recorded once.</param>
/// <param name="Values">What was filled in.</param>
/// <param name="Problems">What is to be mended.</param>
/// <param name="Result">What was worked out.</param>
internal sealed record FormScene(
    StepForm Form, Workbench Bench, JarHistory? History, string Token, string Key, FormValues Values, IReadOnlyList<Problem> Problems, Markup Result)
{
    /// <summary>What there was to see when it was shown: how many steps of its jar; where it is of none, how many events of the ledger.</summary>
    internal required long Seen { get; init; }

    /// <summary>The amounts that the hands pour and weigh, where it was worked out.</summary>
    internal Markup Hands { get; init; }

    /// <summary>What was read in a photo that was sent, where one was.</summary>
    internal Markup Photo { get; init; }

    /// <summary>What the title begins with after a photo; null for nothing.</summary>
    internal string? PhotoTitle { get; init; }

    /// <summary>Where it is sent.</summary>
    internal string Address => History is null ? $"/{Form.Name}" : $"/J/{History.Jar.Number}/{Form.Name}";

    /// <summary>What stands against the step whatever is filled in.</summary>
    internal IReadOnlyList<Problem> Hindered => field ??= Form.Hindered(Bench, History?.Jar, Values);

    /// <summary>The step that shows what was recorded by it.</summary>
    internal Message Look => History is not null
        ? Message.Of($"{new Remedy("jar", new InputName("jar", $"{History.Jar.Number}"))}")
        : Message.Of($"{new Remedy(StepTable.Under(Form.Step.Verb.Split(' ')[0]).FirstOrDefault(step => step.Looks)?.Verb ?? "shelf")}");

    /// <summary>What is shown while one types.</summary>
    internal Markup Live() => Html.Of($"""<div data-hands>{Hands}</div>{(Problems.Count > 0 ? ProblemPage.Lines(Problems, History?.Jar.Number) : Result)}""");
}
