namespace JarLabel.Tests.Store;

/// <summary>Several processes at once in one shop. <c>JARLABEL_WRITERS_SECONDS</c> lets them work longer.</summary>
public sealed class TwoWritersTests(ITestOutputHelper output)
{
    [Fact]
    public void Two_programs_record_at_once_and_both_get_their_turns()
    {
        var seconds = Environment.GetEnvironmentVariable("JARLABEL_WRITERS_SECONDS") ?? "3";
        using var shop = new TempShop();
        using var one = OutsideProgram.StartHand("work", shop.Folder.Path, "1000000", seconds);
        using var other = OutsideProgram.StartHand("work", shop.Folder.Path, "1000000", seconds);
        var told = new[] { one, other }.Select(hand => hand.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken)).ToList();
        var lines = told.Select(text => text.GetAwaiter().GetResult().Split('\n', StringSplitOptions.RemoveEmptyEntries)).ToList();
        one.WaitForExit();
        other.WaitForExit();
        Assert.Equal((0, 0), (one.ExitCode, other.ExitCode));
        var mixed = lines.SelectMany(said => said).Where(line => line.StartsWith("mixed", StringComparison.Ordinal)).Order().ToList();
        Assert.Equal(mixed.Distinct(), mixed);
        Assert.All(lines, said => Assert.True(said.Length > 2, $"One program got only {said.Length} steps."));
        var report = shop.Verify();
        Assert.Empty(report.Damage);
        Assert.Equal(2L * lines.Sum(said => said.Length), report.Events);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lines[0].Length} and {lines[1].Length} steps in {seconds} s each."));
    }

    [Fact]
    public void A_program_waits_for_another_that_holds_the_ledger_for_two_seconds()
    {
        using var shop = TempShop.With(jars: 1);
        using var holder = OutsideProgram.StartHand("hold", shop.Folder.Path, "2");
        Assert.Equal("holding", holder.StandardOutput.ReadLine());
        using var ledger = shop.Open();
        Assert.Equal(4, ledger.Look(view => view.EventCount).Require());
        Assert.Equal(2, BenchWork.Mix(ledger).Require());
        holder.WaitForExit();
    }

    [Fact]
    public void Programs_that_make_the_same_new_shop_at_once_make_one_ledger()
    {
        using var shop = new TempShop();
        var hands = Enumerable.Range(0, 4).Select(_ => OutsideProgram.StartHand("work", shop.Folder.Path, "2", "60")).ToList();
        foreach (var hand in hands)
        {
            hand.StandardOutput.ReadToEnd();
            hand.WaitForExit();
            Assert.Equal(0, hand.ExitCode);
            hand.Dispose();
        }

        using var ledger = shop.Open();
        Assert.Equal(8, ledger.Look(view => view.LastNumber(SubjectKind.Jar)).Require());
        Assert.True(ledger.Verify().Require().Sound);
    }
}
