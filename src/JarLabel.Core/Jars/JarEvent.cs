using System.Text.Json.Serialization;

namespace JarLabel.Core.Jars;

/// <summary>One fact in the life of a jar. Facts are only ever added; what a jar is now is the fold of them. The family is closed: the
/// ledger keeps each under its name, and an unknown name is a problem.</summary>
/// <param name="At">The moment at the bench, local time.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(Mixed), nameof(Mixed))]
[JsonDerivedType(typeof(Blended), nameof(Blended))]
[JsonDerivedType(typeof(Decanted), nameof(Decanted))]
[JsonDerivedType(typeof(Thinned), nameof(Thinned))]
[JsonDerivedType(typeof(Thickened), nameof(Thickened))]
[JsonDerivedType(typeof(PouredOut), nameof(PouredOut))]
[JsonDerivedType(typeof(Used), nameof(Used))]
[JsonDerivedType(typeof(Tested), nameof(Tested))]
[JsonDerivedType(typeof(Moved), nameof(Moved))]
[JsonDerivedType(typeof(Redated), nameof(Redated))]
[JsonDerivedType(typeof(Noted), nameof(Noted))]
[JsonDerivedType(typeof(Labelled), nameof(Labelled))]
[JsonDerivedType(typeof(Discarded), nameof(Discarded))]
[JsonDerivedType(typeof(Undone), nameof(Undone))]
public abstract record JarEvent(DateTime At)
{
    /// <summary>The event's name in the ledger: <c>Mixed</c>.</summary>
    [JsonIgnore]
    public string Name => GetType().Name;

    /// <summary>True when the jar holds something else afterwards, so that an older label is out of date.</summary>
    [JsonIgnore]
    public virtual bool ChangesContents => false;
}
