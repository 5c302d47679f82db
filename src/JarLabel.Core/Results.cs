namespace JarLabel.Core;

/// <summary>Several results as one.</summary>
public static class Results
{
    /// <summary>Every value, or every problem.</summary>
    public static Result<IReadOnlyList<T>> All<T>(IEnumerable<Result<T>> results)
        where T : notnull
    {
        var (values, problems) = (new List<T>(), new List<Problem>());
        foreach (var result in results)
        {
            if (result.TryGet(out var value, out _))
            {
                values.Add(value);
            }

            problems.AddRange(result.Problems);
        }

        return problems.Count > 0 ? Result<IReadOnlyList<T>>.Failed(problems) : Result<IReadOnlyList<T>>.Of(values);
    }
}
