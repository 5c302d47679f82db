using System.Text.Json.Serialization;

namespace JarLabel.Core.Jars;

/// <summary>One fact in the life of a jar. Facts are only ever added; what a jar is now is the fold of them. The family is closed: the
/// ledger keeps each under its name, and an unknown name is a problem.</summary>
/// <param name="At">The moment at the bench, local time.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(Mixed), nameof(Mixed))]
[JsonDerivedType(typeof(Labelled), nameof(Labelled))]
public abstract record JarEvent(DateTime At)
{
    /// <summary>True when the jar holds something else afterwards, so that an older label is out of date.</summary>
    [JsonIgnore]
    public virtual bool ChangesContents => false;
}
