using JarLabel.Core;

namespace JarLabel.Bench.Steps;

/// <summary>Inputs that are read with the help of another. Each is an input of its own: keep it in a property.</summary>
internal static class JoinedInputs
{
    /// <summary>Where it is empty it comes from something else that was filled in.</summary>
    internal static Input<T> ElseFrom<T, TOther>(this Input<T> input, Input<TOther?> other, Func<Workbench, TOther, Result<T>> find)
        where T : notnull
        where TOther : struct => new()
        {
            Fields = input.Fields,
            TryRead = (values, out value) =>
            {
                if (values.Text(input.Field.Name) is not null || values.Text(other.Field.Name) is null)
                {
                    return input.TryRead(values, out value);
                }

                value = default!;
                return values.TryRead(other, out var known) && known is { } one && values.Take(find(values.Bench, one), out value);
            },
        };

    /// <summary>Read together with another input, which says how.</summary>
    internal static Input<T> Beside<T>(this Input<T> input, Input other, Func<Values, string, string, Result<T>> read)
        where T : notnull => new()
        {
            Fields = [input.Field, .. other.Fields],
            TryRead = (values, out value) =>
            {
                value = default!;
                var name = input.Field.Name;
                return other.ReadInto(values) && (values.Text(name) is not { } text ? values.Miss(input.Field) : values.Take(read(values, text, name), out value));
            },
        };
}
