using System.Runtime.InteropServices;
using SQLitePCL;

namespace JarLabel.Store;

/// <summary>Where SQLite's own library is. A published program has it beside it: found at once, where the system would first look for it
/// under another name in forty other places.</summary>
internal static class SqliteFile
{
    private const string Library = "e_sqlite3";

    private static string Name => OperatingSystem.IsWindows() ? Library + ".dll" : OperatingSystem.IsMacOS() ? $"lib{Library}.dylib" : $"lib{Library}.so";

    /// <summary>To be called once, before the first database is opened.</summary>
    internal static bool LookBesideProgram()
    {
        NativeLibrary.SetDllImportResolver(typeof(SQLite3Provider_e_sqlite3).Assembly, (library, _, _) =>
            library == Library && NativeLibrary.TryLoad(Path.Combine(AppContext.BaseDirectory, Name), out var found) ? found : 0);
        return true;
    }
}
