namespace JarLabel.Core.Supplies;

/// <summary>How a pinch of flakes dissolved, the worst last. Dry shellac slowly joins to larger molecules that alcohol no longer takes up.</summary>
public enum Pinch
{
    /// <summary>All of it; in waxy flakes only the wax makes it cloudy.</summary>
    All,

    /// <summary>It stays cloudy or leaves specks, beyond a waxy grade's own wax.</summary>
    Cloudy,

    /// <summary>It swells to a gel or leaves lumps.</summary>
    Gel,
}
