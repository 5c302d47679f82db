namespace JarLabel.Operations.Shops;

/// <summary>A shop's shelves and printers as lines that people change: a line that is new or other than it was is settled, what lost its line is taken away.</summary>
internal static class ShelfLines
{
    private const char Between = '=';

    /// <summary>The shelves, the first one first, each with how warm it is.</summary>
    internal static IEnumerable<string> Of(ShopSettings settings) => settings.Shelves.Select(shelf => $"{shelf.Name} {SettingWords.Warmth(shelf.Temperature, settings.Metric)}");

    /// <summary>The printers that the shop has named.</summary>
    internal static IEnumerable<string> PrintersOf(ShopSettings settings) => settings.Printers.Select(printer => $"{printer.Name}{Between}{printer.Uri}");

    /// <summary>The settings with other shelves, or everything that is wrong with the lines.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="settings">Its settings as they are.</param>
    /// <param name="lines">The lines; where nobody saw the shelves that there are, what is not among them stays.</param>
    /// <param name="where">The field they stand in.</param>
    internal static Result<ShopSettings> Shelves(Workbench bench, ShopSettings settings, SettingLines lines, string where)
    {
        if (lines.Shown is not null && lines.Said.Count == 0)
        {
            return SetupProblems.NoShelf(where);
        }

        return Settled(bench, settings, lines, where, "shelf", text => ShopSetting.ShelfIn(text)?.Name, SetupProblems.NotAShelf).Then(after =>
        {
            string[] kept = [.. lines.Said.Select(NameOf)];
            string[] gone = [.. Gone(lines, kept, NameOf)];
            if (bench.Settings.Shelves.Count == 1 && gone.Length == 1 && !ForgetShelf.Do(bench.With(after), gone[0], where).Ok && after.Shelves.Count > 1)
            {
                return SetupProblems.NotAtOnce(gone[0], where);
            }

            var left = Without(after, gone, (now, name) => ForgetShelf.Do(bench.With(now), name, where));
            return lines.Shown is null ? left : left.Then<ShopSettings>(now => now with { Shelves = [.. now.Shelves.OrderBy(shelf => Array.IndexOf(kept, shelf.Name) is >= 0 and var place ? place : kept.Length)] });
        });

        static string NameOf(string line) => ShopSetting.ShelfIn(line)?.Name ?? line;
    }

    /// <summary>The same of printers.</summary>
    /// <inheritdoc cref="Shelves"/>
    internal static Result<ShopSettings> Printers(Workbench bench, ShopSettings settings, SettingLines lines, string where)
    {
        return Settled(bench, settings, lines, where, "printer", text => text.Contains(Between, StringComparison.Ordinal) ? NameOf(text) : null, TypingProblems.NotAPrinter).Then<ShopSettings>(after =>
        {
            string[] gone = [.. Gone(lines, [.. lines.Said.Select(NameOf)], NameOf)];
            return after with { Printers = [.. after.Printers.Where(printer => !gone.Contains(printer.Name))] };
        });

        static string NameOf(string line) => line.Split(Between)[0].Trim();
    }

    /// <summary>The settings with every line that is not as it was.</summary>
    private static Result<ShopSettings> Settled(Workbench bench, ShopSettings settings, SettingLines lines, string where, string setting, Func<string, string?> nameIn, Func<string, string, Problem> unread)
    {
        var (after, faults, names) = (settings, new List<Problem>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var line in lines.Said)
        {
            var stands = lines.Shown?.Contains(line) == true;
            if ((nameIn(line) ?? (stands ? line : null)) is not { } name)
            {
                faults.Add(unread(line, where));
            }
            else if (!names.Add(name))
            {
                faults.Add(SetupProblems.Twice(name, where));
            }
            else if (!stands)
            {
                var settled = ShopSetting.Change(bench.With(after), setting, line);
                faults.AddRange(settled.Problems);
                after = settled.TryGet(out var now, out _) ? now : after;
            }
        }

        return faults.Count == 0 ? after : Result<ShopSettings>.Failed(faults);
    }

    /// <summary>What stood there and lost its line.</summary>
    private static IEnumerable<string> Gone(SettingLines lines, string[] kept, Func<string, string> name) => (lines.Shown ?? []).Select(name).Except(kept);

    private static Result<ShopSettings> Without(ShopSettings settings, string[] names, Func<ShopSettings, string, Result<ShopSettings>> without)
    {
        var (after, faults) = (settings, new List<Problem>());
        foreach (var name in names.Where(name => after.Shelves.Any(shelf => shelf.Name == name)))
        {
            var left = without(after, name);
            faults.AddRange(left.Problems);
            after = left.TryGet(out var now, out _) ? now : after;
        }

        return faults.Count == 0 ? after : Result<ShopSettings>.Failed(faults);
    }
}

/// <summary>Lines of one field.</summary>
/// <param name="Said">As they stand now.</param>
/// <param name="Shown">As they stood when somebody began to change them; null where nobody saw them.</param>
internal sealed record SettingLines(IReadOnlyList<string> Said, IReadOnlyList<string>? Shown);
