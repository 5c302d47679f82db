using JarLabel.Web.Copying;

namespace JarLabel.Tests.Web;

public sealed class PocketCopyTests : IDisposable
{
    private readonly WebShop shop = new();
    private readonly ScratchFolder scratch = new();

    public void Dispose()
    {
        shop.Dispose();
        scratch.Dispose();
    }

    [Theory]
    [InlineData("letter.txt/pocket")]
    [InlineData("letter.txt/2026/pocket")]
    public void A_copy_into_a_folder_that_cannot_be_made_is_refused(string place)
    {
        File.WriteAllText(scratch["letter.txt"], "Dear customer");
        var problem = Assert.Single(PocketCopy.Write(shop.Bench(), scratch[place]).Problems);
        Assert.Equal(("JL617", scratch[place]), (problem.Code, problem.Where));
        Assert.Contains("Name a folder that can be made or is yours, such as pocket.", problem.Message, StringComparison.Ordinal);
        Assert.Equal("Dear customer", File.ReadAllText(scratch["letter.txt"]));
    }
}
