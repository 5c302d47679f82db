using JarLabel.Store.Checking;

namespace JarLabel.Tests.Store;

/// <summary>A shop folder for one test.</summary>
internal sealed class TempShop : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("jarlabel-test-").FullName;

    public TempShop() => Folder = ShopFolder.At(Path.Combine(root, "shop")).Require();

    public ShopFolder Folder { get; }

    public string Beside(string name) => Path.Combine(root, name);

    public Ledger Open(LedgerMode mode = LedgerMode.Write, int reader = 1) => Ledger.Open(Folder, mode, new PlainJars(reader)).Require();

    /// <summary>A shop with so many jars mixed and thinned, closed again.</summary>
    public static TempShop With(int jars)
    {
        var shop = new TempShop();
        using var ledger = shop.Open();
        for (var i = 0; i < jars; i++)
        {
            BenchWork.Thin(ledger, BenchWork.Mix(ledger, keeps: 100 + i).Require()).Require();
        }

        return shop;
    }

    public VerifyReport Verify()
    {
        using var ledger = Open(LedgerMode.Read);
        return ledger.Verify().Require();
    }

    public void Dispose() => Directory.Delete(root, recursive: true);
}
