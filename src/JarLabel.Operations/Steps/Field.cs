namespace JarLabel.Operations.Steps;

/// <summary>One thing to fill in, as every surface sees it: an option or argument, a field of a form, a column of a list.</summary>
/// <param name="Name">Its identity, which is also its option's spelling without the dashes: <c>flake-date</c>.</param>
/// <param name="Label">The words beside it on a page.</param>
/// <param name="Example">What could stand in it; its own reader takes it.</param>
internal sealed record Field(string Name, string Label, string Example)
{
    /// <summary>What it is, in a line of help.</summary>
    internal string Help { get; init; } = "";

    /// <summary>What kind of word stands behind the option in the help: <c>cut</c>; the name in capitals for an argument.</summary>
    internal string Kind { get; init; } = "text";

    /// <summary>What may be written, beside the field on a page; null for the example.</summary>
    internal string? Hint { get; init; }

    /// <summary>Its option where that is shorter than its identity and the step has no other field of that name.</summary>
    internal string? Short { get; init; }

    /// <summary>True where it stands on the command line without an option.</summary>
    internal bool IsArgument { get; init; }

    /// <summary>True where it may stand on the command line without its option too: <c>thin 1 1.5</c>.</summary>
    internal bool MayStandAlone { get; init; }

    /// <summary>True for what the step acts on: an argument, or the page that it is done from.</summary>
    internal bool IsSubject { get; init; }

    /// <summary>True where nothing can be done without it.</summary>
    internal bool IsNeeded { get; init; }

    /// <summary>True where several may be given.</summary>
    internal bool IsMany { get; init; }

    /// <summary>True where it may be left out although it stands without an option.</summary>
    internal bool IsOptional { get; init; }

    /// <summary>True for yes or no.</summary>
    internal bool IsFlag { get; init; }

    /// <summary>True for what somebody sees or measures at the bench: a page never fills it in from a link, so that no example is recorded as an observation.</summary>
    internal bool IsObserved { get; init; }

    /// <summary>What else may stand than what is offered to choose; null for nothing.</summary>
    internal Func<string, bool>? TakesOther { get; init; }

    /// <summary>True for what is seldom needed and is folded away on a page.</summary>
    internal bool IsMore { get; init; }

    /// <summary>True where a page has other means for it.</summary>
    internal bool IsTypedOnly { get; init; }

    /// <summary>Whether its reader takes a text, where that can be said without the shop; null where it cannot.</summary>
    internal Func<string, bool>? Takes { get; init; }

    /// <summary>For what names a jar, bag or bottle: what is wrong with it by the ledger, such as that there is none.</summary>
    internal Func<Workbench, string, IReadOnlyList<Problem>>? Stands { get; init; }

    /// <summary>What its reader makes of a text; null where it takes it not. Texts that become the same mean the same: <c>2</c> and <c>2-7</c>.</summary>
    internal Func<Workbench, string, object?> Reads { get; init; } = (_, text) => text;

    /// <summary>What can be chosen, each with its words; null for free text. None at all leaves the field out.</summary>
    internal Func<Workbench, IReadOnlyList<(string Value, string Words)>>? Choices { get; init; }

    /// <summary>Usual values to tap, each with its words; the field takes others too. Nothing where there are none.</summary>
    internal Func<Workbench, IReadOnlyList<(string Value, string Words)>> Usual { get; init; } = _ => [];

    /// <summary>Units that stand beside a figure to be tapped, the usual one first; null where it is no amount. The field takes an amount with its unit as well.</summary>
    internal Func<Workbench, IReadOnlyList<(string Value, string Words)>>? Units { get; init; }

    /// <summary>The step that adds something to choose, where a shop may have nothing; null where there is always something.</summary>
    internal Remedy? WhenNone { get; init; }

    /// <summary>True for a choice of a few that is tapped, each a button by itself.</summary>
    internal bool IsTapped { get; init; }

    /// <summary>What the shop has settled, with which a page fills it in; what stands there as it was is left as it is. Null for what is not settled but said.</summary>
    internal Func<Workbench, string?>? Settled { get; init; }

    /// <summary>What stands in it at first, for a jar.</summary>
    internal Func<Jar, string?>? First { get; init; }
}
