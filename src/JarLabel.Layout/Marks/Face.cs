namespace JarLabel.Layout.Marks;

/// <summary>The three weights of the one family.</summary>
public enum Face
{
    /// <summary>Weight 400.</summary>
    Regular,

    /// <summary>Weight 600.</summary>
    SemiBold,

    /// <summary>Weight 700.</summary>
    Bold,
}
