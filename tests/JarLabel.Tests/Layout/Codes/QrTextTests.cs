using System.Collections;

namespace JarLabel.Tests.Layout.Codes;

public class QrTextTests
{
    [Theory]
    [InlineData("http://192.168.1.20:5080/pair?code=04172935")]
    [InlineData("HTTP://192.168.1.20:5080/J/142-5.1")]
    public void The_signs_on_a_screen_are_read_back_by_a_second_library(string payload)
    {
        var lines = QrText.Lines(QrEncoder.Encode(payload));
        var width = lines[0].Length;
        Assert.All(lines, line => Assert.Equal(width, line.Length));
        Assert.All(lines.Take(2), line => Assert.True(string.IsNullOrWhiteSpace(line)));

        bool[][] rows = [.. lines.SelectMany(line => new[] { line.Select(sign => sign is '█' or '▀').ToArray(), [.. line.Select(sign => sign is '█' or '▄')] })];
        var size = width - (2 * QrEncoder.QuietZone);
        var inside = rows.Skip(QrEncoder.QuietZone).Take(size).SelectMany(row => row.Skip(QrEncoder.QuietZone).Take(size)).ToArray();
        Assert.Equal(payload, QrCheck.Read(new QrModules("not looked at", size, new BitArray(inside))));
    }
}
