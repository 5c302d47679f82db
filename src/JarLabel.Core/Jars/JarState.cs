namespace JarLabel.Core.Jars;

/// <summary>How a jar stands on a given day.</summary>
public enum JarState
{
    /// <summary>The flakes are not all dissolved yet.</summary>
    Dissolving,

    /// <summary>Fit for use.</summary>
    Good,

    /// <summary>Old enough that a drop should be tried on glass first.</summary>
    Test,

    /// <summary>Past the use-by estimate.</summary>
    Past,

    /// <summary>Gone.</summary>
    Discarded,

    /// <summary>It was taken back that it was ever filled.</summary>
    TakenBack,
}
