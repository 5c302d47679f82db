using System.Collections;

namespace JarLabel.Tests.Render;

public class QrCheckTests
{
    [Theory]
    [InlineData(Samples.Payload)]
    [InlineData("garnet, 1½ lb cut, mixed 9 Mar 2026, use by ≈ 9 Nov 2026, flammable, jar 142-5")]
    [InlineData("01234567")]
    [InlineData("½ µ")]
    [InlineData("ruby, 1½ lb")]
    public void A_second_library_reads_the_payload_from_the_modules(string payload)
    {
        Assert.Equal(payload, QrCheck.Read(Samples.Code(payload)));
        Assert.True(QrCheck.Agrees(Samples.Code(payload)));
    }

    [Fact]
    public void Modules_that_say_something_else_do_not_agree()
    {
        var other = Samples.Code("HTTP://192.168.1.20:5080/J/143-3.1");
        Assert.False(QrCheck.Agrees(Redone(other, Samples.Payload, (_, dark) => dark)));
    }

    [Fact]
    public void A_code_damaged_beyond_correction_says_nothing()
    {
        var damaged = Redone(Samples.Code(Samples.Payload), Samples.Payload, (i, dark) => dark ^ (i % 3 == 0));
        Assert.Null(QrCheck.Read(damaged));
        Assert.False(QrCheck.Agrees(damaged));
    }

    private static QrModules Redone(QrModules modules, string payload, Func<int, bool, bool> dot)
    {
        var dark = new BitArray(modules.Size * modules.Size);
        for (var i = 0; i < dark.Length; i++)
            dark[i] = dot(i, modules[i / modules.Size, i % modules.Size]);
        return new QrModules(payload, modules.Size, dark);
    }
}
