using JarLabel.Web.Serving;

namespace JarLabel.Tests.Web;

/// <summary>A form that is sent again, whatever became of it the first time.</summary>
public sealed class SentTwiceTests : IDisposable
{
    private const string Key = "0123456789abcdef0123456789abcdef";

    private readonly WebShop shop = new();
    private readonly IdempotencyCache cache = new();
    private int done;

    public void Dispose() => shop.Dispose();

    /// <summary>The answer failed after the step was kept: the same form tells of it again, and does nothing.</summary>
    [Fact]
    public void What_failed_after_it_was_kept_is_not_done_again()
    {
        Assert.All(Enumerable.Range(0, 3), _ => Assert.Throws<FaultAfterKeeping>(() => cache.Of("form", Key, _ =>
        {
            done++;
            throw new FaultAfterKeeping("jar 1-9", new InvalidOperationException("the answer could not be made"));
        })));
        Assert.Equal(1, done);
    }

    [Fact]
    public void What_failed_before_may_be_sent_again()
    {
        Assert.All(Enumerable.Range(0, 2), _ => Assert.Throws<InvalidOperationException>(() => cache.Of("form", Key, _ =>
        {
            done++;
            throw new InvalidOperationException("nothing was kept");
        })));
        Assert.Equal(2, done);
    }

    /// <summary>The code of a bag goes to what stands behind it, and is not called a misread jar.</summary>
    [Theory]
    [InlineData("BAG 1", "500 g")]
    [InlineData("bottle 1", "Ethanol 95 %")]
    public async Task The_code_of_a_bag_or_bottle_leads_to_it(string typed, string says)
    {
        shop.Stock("500 g", "1 gal");
        var number = typed.EndsWith('1') ? JarNumber.From(1).ToString() : typed;
        var sent = await shop.Get($"/?find={Uri.EscapeDataString(typed.Replace("1", number, StringComparison.Ordinal))}");
        Assert.Equal(303, sent.Status);
        var page = await shop.Get(sent.Location!);
        Assert.Equal(200, page.Status);
        Assert.DoesNotContain("misread", page.Seen, StringComparison.Ordinal);
        Assert.Contains(says, page.Seen, StringComparison.OrdinalIgnoreCase);
    }
}
