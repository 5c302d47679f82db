using System.Buffers.Binary;
using System.Numerics;

namespace JarLabel.Store.Checking;

/// <summary>SHA-256 (FIPS 180-4, section 6.2) for the few kilobytes of a seal or a label. The system's own is the same and faster by
/// the megabyte, but on Linux it loads a library of 5 MB first, which a command that runs for some hundredths of a second would feel.</summary>
public sealed class Sha256
{
    /// <summary>How long a digest is.</summary>
    public const int Bytes = 32;

    private const int BlockBytes = 64;

    /// <summary>The first 32 bits of the fractional parts of the cube roots of the first 64 primes (FIPS 180-4, 4.2.2).</summary>
    private static readonly uint[] Constants =
    [
        0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
        0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
        0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
        0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
        0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
        0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
        0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
        0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2,
    ];

    private readonly uint[] state = [0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];
    private readonly uint[] schedule = new uint[64];
    private readonly byte[] rest = new byte[BlockBytes];
    private int held;
    private ulong taken;

    /// <summary>The digest of bytes that are all there.</summary>
    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        var hash = new Sha256();
        hash.Append(bytes);
        return hash.Finish();
    }

    /// <summary>The digest of a stream from where it stands to its end.</summary>
    public static byte[] Of(Stream stream)
    {
        var hash = new Sha256();
        var buffer = new byte[1 << 16];
        while (stream.Read(buffer) is var read and > 0)
        {
            hash.Append(buffer.AsSpan(0, read));
        }

        return hash.Finish();
    }

    /// <summary>Takes the next bytes.</summary>
    public void Append(ReadOnlySpan<byte> bytes)
    {
        taken += (ulong)bytes.Length;
        while (held + bytes.Length >= BlockBytes)
        {
            if (held == 0)
            {
                Take(bytes[..BlockBytes]);
                bytes = bytes[BlockBytes..];
                continue;
            }

            bytes[..(BlockBytes - held)].CopyTo(rest.AsSpan(held));
            bytes = bytes[(BlockBytes - held)..];
            held = 0;
            Take(rest);
        }

        bytes.CopyTo(rest.AsSpan(held));
        held += bytes.Length;
    }

    /// <summary>The digest; afterwards the object is spent.</summary>
    public byte[] Finish()
    {
        Span<byte> tail = stackalloc byte[2 * BlockBytes];
        rest.AsSpan(0, held).CopyTo(tail);
        tail[held] = 0x80;
        var length = held < BlockBytes - 8 ? BlockBytes : 2 * BlockBytes;
        BinaryPrimitives.WriteUInt64BigEndian(tail[(length - 8)..], 8 * taken);
        for (var at = 0; at < length; at += BlockBytes)
        {
            Take(tail.Slice(at, BlockBytes));
        }

        var digest = new byte[Bytes];
        for (var i = 0; i < state.Length; i++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(digest.AsSpan(4 * i), state[i]);
        }

        return digest;
    }

    private void Take(ReadOnlySpan<byte> block)
    {
        var w = schedule;
        for (var t = 0; t < 16; t++)
        {
            w[t] = BinaryPrimitives.ReadUInt32BigEndian(block[(4 * t)..]);
        }

        for (var t = 16; t < 64; t++)
        {
            w[t] = Small(w[t - 2], 17, 19, 10) + w[t - 7] + Small(w[t - 15], 7, 18, 3) + w[t - 16];
        }

        var (a, b, c, d, e, f, g, h) = (state[0], state[1], state[2], state[3], state[4], state[5], state[6], state[7]);
        for (var t = 0; t < 64; t++)
        {
            var first = h + Large(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + Constants[t] + w[t];
            var second = Large(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c));
            (h, g, f, e, d, c, b, a) = (g, f, e, d + first, c, b, a, first + second);
        }

        (state[0], state[1], state[2], state[3]) = (state[0] + a, state[1] + b, state[2] + c, state[3] + d);
        (state[4], state[5], state[6], state[7]) = (state[4] + e, state[5] + f, state[6] + g, state[7] + h);
    }

    private static uint Small(uint x, int one, int two, int shift) => BitOperations.RotateRight(x, one) ^ BitOperations.RotateRight(x, two) ^ (x >> shift);

    private static uint Large(uint x, int one, int two, int three) =>
        BitOperations.RotateRight(x, one) ^ BitOperations.RotateRight(x, two) ^ BitOperations.RotateRight(x, three);
}
