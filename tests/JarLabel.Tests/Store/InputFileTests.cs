using JarLabel.Store.Files;

namespace JarLabel.Tests.Store;

public sealed class InputFileTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Whoever writes a file holds it until it is in its place and a moment longer; who reads it then is not told that it cannot be opened.</summary>
    [Fact]
    public async Task A_file_that_its_writer_still_holds_is_waited_for()
    {
        var place = folder["shop.json"];
        var writer = new FileStream(place, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        writer.Write("{}"u8);
        writer.Flush();
        var reading = Task.Run(() => DataFile.Read(place), TestContext.Current.CancellationToken);
        await Task.Delay(300, TestContext.Current.CancellationToken);
        Assert.False(reading.IsCompleted);
        await writer.DisposeAsync();
        Assert.Equal("{}"u8.ToArray(), await reading);
    }
}
