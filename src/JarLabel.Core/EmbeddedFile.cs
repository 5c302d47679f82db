using System.Reflection;

namespace JarLabel.Core;

/// <summary>A data file that travels inside the program.</summary>
public static class EmbeddedFile
{
    /// <summary>The bytes of one file, such as <c>catalog/grades.json</c>.</summary>
    /// <param name="room">The assembly that holds it.</param>
    /// <param name="name">Its name in there.</param>
    public static byte[] Read(Assembly room, string name)
    {
        using var stream = room.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without its file {name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>The same for this room's own files.</summary>
    internal static byte[] Read(string name) => Read(typeof(EmbeddedFile).Assembly, name);
}
