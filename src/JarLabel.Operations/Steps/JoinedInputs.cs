namespace JarLabel.Operations.Steps;

/// <summary>Inputs that are read with the help of another. Each is an input of its own: keep it in a property.</summary>
internal static class JoinedInputs
{
    /// <summary>Where it is empty it comes from something else that was filled in.</summary>
    internal static Input<T> ElseFrom<T, TOther>(this Input<T> input, Input<TOther?> other, Func<Workbench, TOther, Result<T>> find)
        where T : notnull
        where TOther : struct => new()
        {
            Fields = input.Fields,
            TryRead = (values, one, out value) =>
            {
                if (values.Text(one.Name) is not null || values.Text(other.Field.Name) is null)
                {
                    return input.TryRead(values, one, out value);
                }

                value = default!;
                return values.TryRead(other, out var known) && known is { } found && values.Take(find(values.Bench, found), out value);
            },
        };

    /// <summary>Read together with another input, which says how.</summary>
    internal static Input<T> Beside<T>(this Input<T> input, Input other, Func<Values, string, string, Result<T>> read)
        where T : notnull => new()
        {
            Fields = [input.Field, .. other.Fields],
            TryRead = (values, one, out value) =>
            {
                value = default!;
                return other.ReadInto(values) && (values.Text(one.Name) is not { } text ? values.Miss(one) : values.Take(read(values, text, one.Name), out value));
            },
        };
}
