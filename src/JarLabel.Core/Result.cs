using System.Diagnostics.CodeAnalysis;

namespace JarLabel.Core;

/// <summary>Either a value, or the problems that stand in its way (at least one). <c>default</c> is not a valid result.</summary>
public readonly struct Result<T>
    where T : notnull
{
    private readonly T? value;
    private readonly IReadOnlyList<Problem>? problems;

    private Result(T? value, IReadOnlyList<Problem>? problems)
    {
        this.value = value;
        this.problems = problems;
    }

    /// <summary>True when there is a value.</summary>
    public bool Ok => problems is null && value is not null;

    /// <summary>The problems; empty when there is a value.</summary>
    public IReadOnlyList<Problem> Problems => problems ?? [];

    /// <summary>A failed result; throws when no problem is given.</summary>
    public static Result<T> Failed(IReadOnlyList<Problem> problems)
    {
        ArgumentOutOfRangeException.ThrowIfZero(problems.Count);
        return new Result<T>(default, problems);
    }

    /// <summary>A value whose type is an interface, which C# does not convert by itself.</summary>
    public static Result<T> Of(T value) => new(value, null);

    /// <summary>A value.</summary>
    public static implicit operator Result<T>(T value) => new(value, null);

    /// <summary>One problem.</summary>
    public static implicit operator Result<T>(Problem problem) => new(default, [problem]);

    /// <summary>What stood in the way of something else, handed on.</summary>
    public static implicit operator Result<T>(Faults faults) => Failed(faults);

    /// <summary>Takes the value, or the problems.</summary>
    public bool TryGet([NotNullWhen(true)] out T? result, out Faults faults)
    {
        result = value;
        faults = new Faults(Problems);
        return Ok;
    }

    /// <summary>Goes on with the value, or hands the problems on.</summary>
    public Result<TNext> Then<TNext>(Func<T, Result<TNext>> next)
        where TNext : notnull
    {
        return Ok ? next(value!) : Result<TNext>.Failed(Problems);
    }

    /// <summary>The value; throws for a caller who did not ask first. For tests and for data of our own.</summary>
    public T Require() => Ok
        ? value!
        : throw new InvalidOperationException(string.Join(Environment.NewLine, Problems.Select(p => $"{p.Code} {p.Where}: {p.Message}")));
}
