using JarLabel.Core;

namespace JarLabel.Bench.Typing;

/// <summary>What can be wrong with a measure that was typed.</summary>
internal static class MeasureProblems
{
    internal static Problem NotMillimeters(string read, string where) =>
        new("JL354", $"Read {Quoted.Of(read)} as a shift; write millimetres, minus for left and up, such as 0.8 or -0.5.", where);

    internal static Problem NotAScale(string read, string where) =>
        new("JL355", $"Read {Quoted.Of(read)} as a scale; write what you measured over what the ruler says, such as 199/200, or 0.995.", where);
}
