using System.Collections;
using System.Text;
using QRCoder;

namespace JarLabel.Layout.Codes;

/// <summary>Makes QR codes (ISO/IEC 18004): alphanumeric where the payload allows, error correction M or better.</summary>
public static class QrEncoder
{
    /// <summary>White modules kept free on every side.</summary>
    public const int QuietZone = 4;

    /// <summary>Bytes the largest code holds at level M.</summary>
    public const int MostBytes = 2331;

    /// <summary>True when no code holds it.</summary>
    public static bool IsTooLong(string payload) => Encoding.UTF8.GetByteCount(payload) > MostBytes;

    /// <summary>The smallest code at level M.</summary>
    /// <param name="payload">1 to <see cref="MostBytes"/> bytes of UTF-8.</param>
    /// <remarks>Beyond ASCII the bytes are UTF-8, which phones guess right; QRCoder's own choice for a text such as "1½ lb" is ISO 8859-1,
    /// which they often take for something else.</remarks>
    public static QrModules Encode(string payload) =>
        WithoutQuietZone(payload, QRCodeGenerator.GenerateQrCode(payload, QRCodeGenerator.ECCLevel.M, forceUtf8: !Ascii.IsValid(payload)));

    private static QrModules WithoutQuietZone(string payload, QRCodeData data)
    {
        var size = data.ModuleMatrix.Count - (2 * QuietZone);
        var dark = new BitArray(size * size);
        for (var row = 0; row < size; row++)
        {
            var line = data.ModuleMatrix[row + QuietZone];
            for (var column = 0; column < size; column++)
                dark[(row * size) + column] = line[column + QuietZone];
        }

        return new QrModules(payload, size, dark);
    }
}
