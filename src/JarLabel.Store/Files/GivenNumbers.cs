namespace JarLabel.Store.Files;

/// <summary>The highest jar, bag and bottle numbers that were ever given out, kept beside the ledger: when an older backup stands in its
/// place, a number that is already on glass is still not given again. Where the file is missing, the names of the written labels tell.
/// A few bytes, always as many, written in their place, so that even a full disk has room for them.</summary>
internal sealed class GivenNumbers(ShopFolder folder)
{
    private const int FileBytes = 96;
    private Dictionary<SubjectKind, int>? known;

    /// <summary>The highest number given out, or 0.</summary>
    internal int Last(SubjectKind kind) => (known ??= Read() ?? OnLabels()).GetValueOrDefault(kind);

    /// <summary>Notes numbers that are now in the ledger; a number once noted never becomes a lower one. What cannot be noted now is noted
    /// with the next number: the ledger has it.</summary>
    internal void Raise(IReadOnlyDictionary<SubjectKind, int> given)
    {
        if (given.Count == 0)
        {
            return;
        }

        try
        {
            using var file = PatientFile.Open(folder.Numbers, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, Patience.ToReach);
            if (file is null)
            {
                return;
            }

            var isNew = file.Length == 0;
            var before = Parsed(file) ?? OnLabels();
            var now = SubjectWords.OnGlass.ToDictionary(kind => kind, kind => Math.Max(before.GetValueOrDefault(kind), given.GetValueOrDefault(kind)));
            if (isNew || SubjectWords.OnGlass.Any(kind => now[kind] != before.GetValueOrDefault(kind)))
            {
                RandomAccess.Write(file.SafeFileHandle, Written(now), 0);
                file.Flush(flushToDisk: true);
            }

            if (isNew)
            {
                FolderSync.Flush(folder.Path);
            }

            known = now;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            known = null;
        }
    }

    /// <summary>Takes what the labels' names say as well.</summary>
    internal void RaiseFromLabels() => Raise(OnLabels());

    /// <summary>The jar, bag or bottle of a label by its file's name; null for any other file.</summary>
    internal static Subject? OfLabel(string path)
    {
        var parts = Path.GetFileName(path).Split('-');
        return parts.Length > 2 && SubjectWords.Kinds.TryGetValue(parts[0], out var kind) && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? new Subject(kind, number)
            : null;
    }

    private Dictionary<SubjectKind, int>? Read()
    {
        if (!File.Exists(folder.Numbers))
        {
            return null;
        }

        try
        {
            using var file = PatientFile.Open(folder.Numbers, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, Patience.ToReach);
            return file is null ? null : Parsed(file);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return null;
        }
    }

    private Dictionary<SubjectKind, int> OnLabels()
    {
        var highest = new Dictionary<SubjectKind, int>();
        if (Directory.Exists(folder.Labels))
        {
            foreach (var (kind, number) in Directory.EnumerateFiles(folder.Labels).Select(OfLabel).OfType<Subject>())
            {
                highest[kind] = Math.Max(number, highest.GetValueOrDefault(kind));
            }
        }

        return highest;
    }

    private static byte[] Written(Dictionary<SubjectKind, int> numbers)
    {
        var lines = string.Concat(SubjectWords.OnGlass.Select(kind => string.Create(CultureInfo.InvariantCulture, $"{SubjectWords.Of(kind)} {numbers[kind]}\n")));
        return Encoding.ASCII.GetBytes(lines.PadRight(FileBytes - 1) + "\n");
    }

    private static Dictionary<SubjectKind, int>? Parsed(FileStream file)
    {
        var bytes = new byte[FileBytes];
        if (file.Length != FileBytes || file.ReadAtLeast(bytes, FileBytes, throwOnEndOfStream: false) < FileBytes)
        {
            return null;
        }

        var numbers = new Dictionary<SubjectKind, int>();
        foreach (var line in Encoding.ASCII.GetString(bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (line.Split(' ') is not [var word, var read] || !SubjectWords.Kinds.TryGetValue(word, out var kind) || !int.TryParse(read, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                return null;
            }

            numbers[kind] = number;
        }

        return numbers;
    }
}
