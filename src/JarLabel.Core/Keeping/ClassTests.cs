namespace JarLabel.Core.Keeping;

/// <summary>What the tested jars of one class showed.</summary>
/// <param name="Lives">One for each jar, ages brought to 20 °C by the middle pace of ageing.</param>
/// <param name="Tests">How many tests that were.</param>
public sealed record ClassTests(IReadOnlyList<LifeObservation> Lives, int Tests)
{
    /// <summary>The same lives with their ages brought to 20 °C by each of the paces that are thought possible; null where all stood at 20 °C.</summary>
    public IReadOnlyList<IReadOnlyList<LifeObservation>>? AtPaces { get; init; }

    /// <summary>The lives at one of the paces.</summary>
    internal IReadOnlyList<LifeObservation> At(int pace) => AtPaces?[pace] ?? Lives;

    /// <summary>What tested jars of one class showed.</summary>
    /// <param name="jars">The jars, each with at least one test that says something.</param>
    /// <param name="settings">The paces.</param>
    public static ClassTests Of(IReadOnlyCollection<TestedJar> jars, KeepingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(jars);
        ArgumentNullException.ThrowIfNull(settings);
        IReadOnlyList<LifeObservation>[] paces = [.. settings.Paces.Select((_, pace) => (LifeObservation[])[.. jars.Select(j => DryingTests.Life(j.At(pace))!.Value)])];
        return new(paces[settings.MiddlePace], jars.Sum(j => j.Tests.Count)) { AtPaces = paces.All(p => p.SequenceEqual(paces[0])) ? null : paces };
    }
}
