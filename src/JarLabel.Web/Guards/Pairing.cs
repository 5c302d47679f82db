namespace JarLabel.Web.Guards;

/// <summary>Lets a device in that knows the code on the server's screen. A code serves once and dies after five wrong tries; after twenty wrong
/// tries no device is paired any more.</summary>
internal sealed class Pairing(Devices devices, Action<string> say)
{
    private const int TriesOfOneCode = 5;
    private const int TriesOfAll = 20;

    private readonly Lock gate = new();
    private int wrong;

    /// <summary>The code that counts now, as shown: <c>0417 2935</c>.</summary>
    internal string Code { get; private set; } = NewCode();

    /// <summary>The new device's token, or why there is none.</summary>
    internal Result<string> Pair(string code, string name, DateTime now)
    {
        lock (gate)
        {
            if (wrong >= TriesOfAll)
            {
                return WebProblems.PairingClosed();
            }

            if (!CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(Digits(code)), Encoding.UTF8.GetBytes(Digits(Code))))
            {
                return Refuse(code);
            }

            var token = devices.Add(name, now);
            Code = NewCode();
            say($"Paired {name}. The code for the next device: {Code}");
            return token;
        }
    }

    private Problem Refuse(string code)
    {
        wrong++;
        if (wrong >= TriesOfAll)
        {
            say("Too many wrong pairing codes: no device can be paired until this server is started again.");
        }
        else if (wrong % TriesOfOneCode == 0)
        {
            Code = NewCode();
            say($"Five wrong pairing codes. The new code: {Code}");
        }

        return WebProblems.WrongCode(code);
    }

    private static string Digits(string code) => string.Concat(code.Where(char.IsAsciiDigit));

    private static string NewCode() =>
        RandomNumberGenerator.GetInt32(100_000_000).ToString("0000 0000", CultureInfo.InvariantCulture);
}
