using System.Security.Cryptography;
using JarLabel.Store.Checking;

namespace JarLabel.Tests.Store;

public class Sha256Tests
{
    // The examples published with the standard.
    [Theory, Cites(References.Fips180, "examples for SHA-256: one block, two blocks; the empty message")]
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    [InlineData("", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    public void It_gives_the_published_digests(string message, string digest) =>
        Assert.Equal(digest, Convert.ToHexStringLower(Sha256.Of(Encoding.ASCII.GetBytes(message))));

    // The system's own implementation is the judge.
    [Fact]
    public void It_agrees_with_the_systems_own_at_every_length_and_in_every_cut()
    {
        var random = new Random(18);
        for (var length = 0; length < 400; length++)
        {
            var bytes = new byte[length];
            random.NextBytes(bytes);
            var expected = SHA256.HashData(bytes);
            Assert.Equal(expected, Sha256.Of(bytes));
            Assert.Equal(expected, Sha256.Of(new MemoryStream(bytes)));
            var hash = new Sha256();
            for (var at = 0; at < length;)
            {
                var piece = Math.Min(random.Next(1, 90), length - at);
                hash.Append(bytes.AsSpan(at, piece));
                at += piece;
            }

            Assert.Equal(expected, hash.Finish());
        }
    }
}
