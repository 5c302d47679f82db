using System.Security.Cryptography.X509Certificates;

namespace JarLabel.Acceptance;

public sealed partial class ServeTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_jar_is_shown_until_the_server_is_stopped_and_then_it_ends_well()
    {
        Mix();
        using var server = Serve();
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        Assert.Contains("arnet", await client.GetStringAsync("/J/1-9.1", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(0, server.Stop("-TERM"));
    }

    [Fact]
    public async Task What_was_answered_as_recorded_when_the_server_is_stopped_is_in_the_ledger()
    {
        Mix();
        using var server = Serve();
        using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(server.Address) };
        var told = new List<string>();
        var work = Task.WhenAll(Enumerable.Range(0, 4).Select(async worker =>
        {
            for (var i = 0; i < 200; i++)
            {
                var note = $"note {worker} {i}";
                try
                {
                    if (await Note(client, note) == HttpStatusCode.SeeOther)
                    {
                        lock (told)
                        {
                            told.Add(note);
                        }
                    }
                }
                catch (Exception fault) when (fault is HttpRequestException or IOException)
                {
                    return;
                }
            }
        }));
        while (Told() < 12 && !work.IsCompleted)
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        Assert.Equal(0, server.Stop("-INT"));
        await work;
        Assert.InRange(told.Count, 12, 799);
        var history = shop.Json("jar", "1")["history"]!.AsArray().Select(e => e!["text"]?.GetValue<string>()).ToHashSet();
        Assert.All(told, note => Assert.Contains(note, history));
        Assert.Equal(0, shop.Run("verify").ExitCode);

        int Told()
        {
            lock (told)
            {
                return told.Count;
            }
        }
    }

    [Fact]
    public void Without_a_network_it_listens_on_this_machine_alone()
    {
        using var server = Serve();
        var uri = new Uri(server.Address);
        Assert.Equal("127.0.0.1", uri.Host);
        foreach (var address in Dns.GetHostAddresses(Dns.GetHostName(), AddressFamily.InterNetwork).Where(a => !IPAddress.IsLoopback(a)))
        {
            using var client = new TcpClient();
            Assert.Throws<SocketException>(() => client.Connect(address, uri.Port));
        }
    }

    [Fact]
    public async Task On_a_network_a_device_pairs_with_the_code_and_may_do_nothing_more_once_it_is_revoked()
    {
        Mix();
        using (var server = Serve("--lan", "127.0.0.1"))
        {
            var code = server.Answer["pairingCode"]!.GetValue<string>();
            Assert.Matches("^[0-9]{4} [0-9]{4}$", code);
            using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(server.Address) };
            Assert.Equal(HttpStatusCode.SeeOther, await Send(client, "/pair", new("code", code), new("name", "bench tablet")));
            Assert.Equal(HttpStatusCode.SeeOther, await Note(client, "strained twice"));
            Assert.Equal("bench tablet", shop.Json("serve", "devices")["devices"]![0]!["name"]!.GetValue<string>());

            shop.Json("serve", "revoke", "1");
            using var gone = await client.GetAsync(new Uri("/J/1-9", UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal((HttpStatusCode.SeeOther, "/pair?to=/J/1-9"), (gone.StatusCode, gone.Headers.Location!.ToString()));
        }

        Assert.Equal(1, shop.Json("jar", "1")["history"]!.AsArray().Count(e => e!["event"]!.GetValue<string>() == "Noted"));
        Assert.Empty(shop.Json("serve", "devices")["devices"]!.AsArray());
        var run = shop.Run("serve", "revoke", "7");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL614", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Encrypted_it_shows_the_certificate_of_the_shop_folder_and_says_its_fingerprint()
    {
        Mix();
        using var server = Serve("--lan", "127.0.0.1", "--https");
        Assert.StartsWith("https://127.0.0.1:", server.Address, StringComparison.Ordinal);
        using var kept = X509CertificateLoader.LoadCertificateFromFile(Path.Combine(shop.Folder, "certificate.pem"));
        Assert.Equal(server.Answer["certificateSha256"]!.GetValue<string>().Replace(":", "", StringComparison.Ordinal), Convert.ToHexString(SHA256.HashData(kept.RawData)));
        var trust = new X509ChainPolicy { TrustMode = X509ChainTrustMode.CustomRootTrust, RevocationMode = X509RevocationMode.NoCheck };
        trust.CustomTrustStore.Add(kept);
        using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, SslOptions = new() { CertificateChainPolicy = trust } }) { BaseAddress = new Uri(server.Address) };
        using var page = await client.GetAsync(new Uri("/pair", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Contains(server.Answer["certificateSha256"]!.GetValue<string>(), await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(0, server.Stop("-TERM"));
    }

    [Theory]
    [InlineData(null, "open nothing on a telephone yet; \"jarlabel shop set base-url {0}\" lets those printed from then on open their jar here")]
    [InlineData("http://192.168.1.20:5080", "open http://192.168.1.20:5080, not these pages; \"jarlabel shop set base-url {0}\" lets")]
    [InlineData("{0}", "open their jar here")]
    public void On_a_network_the_terminal_says_where_the_codes_on_labels_lead(string? codes, string says)
    {
        using var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        var address = $"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}";
        free.Stop();
        if (codes is not null)
        {
            Assert.Equal(0, shop.Run("shop", "set", "base-url", string.Format(CultureInfo.InvariantCulture, codes, address)).ExitCode);
        }

        using var server = shop.Start("serve", "--lan", "127.0.0.1", "--port", $"{new Uri(address).Port}");
        var told = new StringBuilder();
        while (server.StandardOutput.ReadLine() is { } line && !line.Contains("Ctrl-C", StringComparison.Ordinal))
        {
            told.Append(' ').Append(line.Trim());
        }

        using (var kill = Process.Start("kill", ["-TERM", $"{server.Id}"]))
        {
            kill.WaitForExit();
        }

        server.WaitForExit();
        Assert.Matches($"codes on labels +{Regex.Escape(string.Format(CultureInfo.InvariantCulture, says, address))}", told.ToString());
    }

    [Fact]
    public void A_port_in_use_and_an_address_that_is_none_are_told()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        var run = shop.Run("serve", "--port", $"{port}");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL612", run.Errors, StringComparison.Ordinal);
        Assert.All(["0.0.0.0", "shop.example", "::", "1"], address => Assert.Contains("JL613", shop.Run("serve", "--lan", address).Errors, StringComparison.Ordinal));
        Assert.Contains("JL612", shop.Run("serve", "--lan", "192.0.2.7").Errors, StringComparison.Ordinal);
    }

    private void Mix() => Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label").ExitCode);

    private ServedShop Serve(params string[] more) => new(Started(["serve", "--port", "0", "--json", .. more]));

    // A job in the background of a script is born deaf to Ctrl-C, and so are its children; here it must be heard wherever the tests run.
    private Process Started(string[] arguments) =>
        OperatingSystem.IsLinux() ? shop.StartUnder("env", ["--default-signal=INT", Place.Program, .. arguments]) : shop.Start(arguments);

    private static Task<HttpStatusCode> Note(HttpClient client, string text) => Send(client, "/J/1-9/note", new("text", text), new("do", "record"));

    /// <summary>Fills in a form as a browser does: its hidden fields come along.</summary>
    private static async Task<HttpStatusCode> Send(HttpClient client, string path, params KeyValuePair<string, string>[] fields)
    {
        var form = HiddenField().Matches(await client.GetStringAsync(path)).Select(m => KeyValuePair.Create(m.Groups[1].Value, m.Groups[2].Value));
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new FormUrlEncodedContent([.. form, .. fields]) };
        request.Headers.Add("Origin", client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        using var response = await client.SendAsync(request);
        return response.StatusCode;
    }

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\">")]
    private static partial Regex HiddenField();
}
