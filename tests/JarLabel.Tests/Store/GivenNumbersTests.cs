namespace JarLabel.Tests.Store;

/// <summary>A number that is on glass is never given again, whatever ledger stands in the shop.</summary>
public sealed class GivenNumbersTests
{
    private const string At = "2026-03-09T14:30:00";

    [Fact]
    public void With_an_older_backup_in_place_new_numbers_go_on_above_and_that_is_told_once()
    {
        using var shop = TempShop.With(jars: 2);
        var older = File.ReadAllBytes(shop.Folder.Ledger);
        using (var ledger = shop.Open())
        {
            Assert.Equal((3, 4), (BenchWork.Mix(ledger).Require(), BenchWork.Mix(ledger).Require()));
        }

        File.WriteAllBytes(shop.Folder.Ledger, older);
        Assert.Equal(["JL454"], shop.Verify().Notices.Select(notice => notice.Code));
        using (var ledger = shop.Open())
        {
            var (jar, cautions) = Jar(ledger, label: null).Require();
            Assert.Equal(5, jar);
            Assert.Equal("JL454", cautions.Single().Code);
            Assert.StartsWith("Jars 3 to 4 were given out", cautions.Single().Message, StringComparison.Ordinal);
            Assert.Empty(Jar(ledger, label: null).Require().Cautions);
        }

        var report = shop.Verify();
        Assert.True(report.Sound);
        Assert.Equal("JL455", report.Notices.Single().Code);
        Assert.StartsWith("Jars 3 to 4 ", report.Notices.Single().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_list_is_gone_or_torn_the_labels_tell()
    {
        foreach (var torn in (string?[])[null, "", "jar 1\nbag"])
        {
            using var shop = TempShop.With(jars: 2);
            var numbers = Path.Combine(shop.Folder.Path, "numbers.txt");
            File.Delete(numbers);
            if (torn is not null)
            {
                File.WriteAllText(numbers, torn);
            }

            File.WriteAllText(Path.Combine(shop.Folder.Labels, "jar-41-7-r2-wide.pdf"), "on glass");
            File.WriteAllText(Path.Combine(shop.Folder.Labels, "bottle-6-bottle.pdf"), "on glass");
            using var ledger = shop.Open();
            Assert.Equal(42, Jar(ledger, label: null).Require().Jar);
            Assert.Equal("jar 42 bag 0 bottle 6", Regex.Replace(File.ReadAllText(numbers).Trim(), "\\s+", " "));
        }
    }

    [Fact]
    public void A_label_of_a_jar_that_the_ledger_does_not_know_is_never_written_over()
    {
        using var shop = TempShop.With(jars: 2);
        var onGlass = Path.Combine(shop.Folder.Labels, "jar-3-r1-wide.pdf");
        File.WriteAllText(onGlass, "on glass");
        using var ledger = shop.Open();
        var refused = Jar(ledger, label: "wide");
        Assert.Equal("JL456", refused.Problems.Single().Code);
        Assert.Equal(4, Jar(ledger, label: "wide").Require().Jar);
        Assert.Equal("on glass", File.ReadAllText(onGlass));
    }

    [Fact]
    public void Many_at_once_leave_the_highest_number()
    {
        using var shop = TempShop.With(jars: 1);
        Parallel.For(0, 8, _ =>
        {
            using var ledger = shop.Open();
            for (var i = 0; i < 5; i++)
            {
                BenchWork.Mix(ledger).Require();
            }
        });
        Assert.StartsWith("jar 41\n", File.ReadAllText(Path.Combine(shop.Folder.Path, "numbers.txt")), StringComparison.Ordinal);
    }

    private static Result<(int Jar, IReadOnlyList<Problem> Cautions)> Jar(Ledger ledger, string? label) => ledger.Record<(int, IReadOnlyList<Problem>)>(step =>
    {
        var jar = step.NextNumber(SubjectKind.Jar);
        step.Append(Subject.Jar(jar), At, "Mixed", 1, "{\"ml\":402.5,\"shelf\":\"main\",\"keeps\":245}");
        if (label is not null)
        {
            step.Stage(string.Create(CultureInfo.InvariantCulture, $"labels/jar-{jar}-r1-{label}.pdf"), [1, 2, 3]);
        }

        return (jar, step.Cautions);
    });
}
