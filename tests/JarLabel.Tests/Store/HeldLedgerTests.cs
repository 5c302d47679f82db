namespace JarLabel.Tests.Store;

/// <summary>In a class of its own, so that its long wait runs beside the other tests.</summary>
public sealed class HeldLedgerTests
{
    [Fact]
    public void A_ledger_that_is_held_too_long_is_told_with_who_may_hold_it()
    {
        using var shop = TempShop.With(jars: 1);
        using var holder = OutsideProgram.StartHand("hold", shop.Folder.Path, "60");
        Assert.Equal("holding", holder.StandardOutput.ReadLine());
        using var ledger = shop.Open();
        var problem = BenchWork.Mix(ledger).Problems.Single();
        Assert.Equal("JL413", problem.Code);
        Assert.Contains("another jarlabel", problem.Message, StringComparison.Ordinal);
        holder.Kill();
        holder.WaitForExit();
        Assert.Equal(2, BenchWork.Mix(ledger).Require());
    }
}
