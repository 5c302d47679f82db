namespace JarLabel.Web.Guards;

/// <summary>Lets a device in that knows the code on the server's screen. A code serves once. Each host has five wrong tries in ten minutes, so that
/// one stranger is soon sent away and shuts out nobody else; against many strangers the code grows: after twenty wrong tries it has twelve digits, of
/// which a guess hits one in a million millions. At most so many wrong tries a minute are taken from all of them together, which comes to one in
/// three thousand within a whole year of guessing.</summary>
/// <param name="devices">Where paired devices are kept.</param>
/// <param name="say">Where a line for the person at the terminal goes.</param>
/// <param name="clock">The time.</param>
internal sealed class Pairing(Devices devices, Action<string> say, TimeProvider clock)
{
    private const int TriesOfOneCode = 5, TriesOfShortCodes = 20, TriesOfOneHost = 5, TriesOfAllAMinute = 600;
    private const int ShortCode = 2, LongCode = 3;

    private readonly Lock gate = new();
    private readonly RateLimiter ofOne = new(TriesOfOneHost, TimeSpan.FromMinutes(10), clock);
    private readonly RateLimiter ofAll = new(TriesOfAllAMinute, TimeSpan.FromMinutes(1), clock);
    private int wrong;

    /// <summary>The code that counts now, as shown: <c>0417 2935</c>.</summary>
    internal string Code { get; private set; } = NewCode(ShortCode);

    /// <summary>The new device's token, or why there is none.</summary>
    internal Result<string> Pair(string code, string name, IPAddress from, DateTime now)
    {
        lock (gate)
        {
            // Before the code is looked at: who has used up the tries learns nothing any more.
            if (ofOne.Spent(from))
            {
                return WebProblems.PairingClosed();
            }

            if (ofAll.Spent(IPAddress.None))
            {
                return WebProblems.PairingSlow();
            }

            if (!CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(Digits(code)), Encoding.UTF8.GetBytes(Digits(Code))))
            {
                return Refuse(code, from);
            }

            var token = devices.Add(name, now);
            Code = NewCode(Groups);
            say($"Paired {name}. The code for the next device: {Code}");
            return token;
        }
    }

    private int Groups => wrong >= TriesOfShortCodes ? LongCode : ShortCode;

    private Problem Refuse(string code, IPAddress from)
    {
        ofOne.Count(from);
        ofAll.Count(IPAddress.None);
        wrong++;
        if (wrong == TriesOfShortCodes)
        {
            Code = NewCode(Groups);
            say($"Twenty wrong pairing codes: somebody may be guessing. From now on the code is longer: {Code}");
        }
        else if (wrong < TriesOfShortCodes && wrong % TriesOfOneCode == 0)
        {
            Code = NewCode(Groups);
            say($"Five wrong pairing codes. The new code: {Code}");
        }

        return WebProblems.WrongCode(code);
    }

    private static string Digits(string code) => string.Concat(code.Where(char.IsAsciiDigit));

    private static string NewCode(int groups) =>
        string.Join(' ', Enumerable.Range(0, groups).Select(_ => RandomNumberGenerator.GetInt32(10_000).ToString("0000", CultureInfo.InvariantCulture)));
}
