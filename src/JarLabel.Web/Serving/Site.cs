namespace JarLabel.Web.Serving;

/// <summary>Answers a request: first the guards, then the page that its path names. Looking is GET, recording is POST, and nothing else
/// is taken.</summary>
internal sealed class Site : IDisposable
{
    private const int MostRequestsAMinute = 600;
    private const int MostWrongGuessesAMinute = 30;

    private readonly ServeRequest request;
    private readonly Hosts hosts;
    private readonly RequestAuthenticator authenticator;
    private readonly Pairing? pairing;
    private readonly PageCache cache;
    private readonly Recording recording;
    private readonly PaperRuns papers;
    private readonly Devices devices;
    private readonly ShopCopies copies = new();
    private readonly Photos photos = new();
    private readonly FormTokens tokens = new();
    private readonly RateLimiter requests = new(MostRequestsAMinute, TimeSpan.FromMinutes(1), TimeProvider.System);
    private readonly RateLimiter guesses = new(MostWrongGuessesAMinute, TimeSpan.FromMinutes(1), TimeProvider.System);

    internal Site(ServeRequest request, Workbench bench, Devices devices, Hosts hosts)
    {
        this.request = request;
        this.devices = devices;
        this.hosts = hosts;
        CodesLead = bench.Settings.BaseUrl?.Text;
        authenticator = new RequestAuthenticator(request.Lan is not null, request.Open, devices);
        pairing = request.Lan is null ? null : new Pairing(devices, request.Say, TimeProvider.System);
        cache = new PageCache(bench.Folder, () => request.Door.Now);
        papers = new PaperRuns(request.Say);
        recording = new Recording(request.Door, tokens, papers, devices);
    }

    /// <summary>The fingerprint of the certificate; null where nothing is encrypted.</summary>
    internal string? Fingerprint { get; init; }

    /// <summary>Where the codes on labels lead; null for nowhere.</summary>
    internal string? CodesLead { get; }

    /// <summary>The code that lets the next device record; null where none is needed.</summary>
    internal string? PairingCode => pairing?.Code;

    /// <summary>Takes back from their printers what is not printed yet.</summary>
    internal void Stop() => papers.Stop();

    /// <inheritdoc/>
    public void Dispose()
    {
        papers.Dispose();
        photos.Dispose();
    }

    internal async Task Handle(HttpContext context)
    {
        SafeHeaders.Put(context.Response.Headers);
        var kept = KeptWork.Watch();
        try
        {
            var reply = await Answer(context);
            await reply.Send(context);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException && !context.RequestAborted.IsCancellationRequested && !context.Response.HasStarted)
        {
            var words = (fault as FaultAfterKeeping)?.Words ?? kept.Words;
            request.Say($"This is a fault in jarlabel. {words} Please report it with what was done:{Environment.NewLine}{fault}");
            await Reply.Refused(500, WebProblems.OurFault(words)).Send(context);
        }
    }

    private async Task<Reply> Answer(HttpContext context)
    {
        var asked = context.Request;
        if (!hosts.Allow(asked.Host.Host))
        {
            return Reply.Refused(400, WebProblems.ForeignHost(asked.Host.Value ?? "", hosts.Names));
        }

        if (TooFast(requests.Count, context))
        {
            return Reply.Refused(429, WebProblems.TooFast());
        }

        var (path, who) = (asked.Path.Value ?? "", authenticator.Who(asked));
        return HttpMethods.IsGet(asked.Method) || HttpMethods.IsHead(asked.Method) ? Look(context, path, who)
            : HttpMethods.IsPost(asked.Method) ? await Take(context, path, who)
            : Reply.Refused(405, WebProblems.MethodNotAllowed(asked.Method));
    }

    private Reply Look(HttpContext context, string path, Client who)
    {
        switch (Route.Of(path))
        {
            case { Kind: RouteKind.Script }:
                return new Reply(200, "text/javascript; charset=utf-8", Pages.PageAssets.Script);
            case { Kind: RouteKind.Keeper }:
                return new Reply(200, "text/javascript; charset=utf-8", Pages.PageAssets.Keeper);
            case { Kind: RouteKind.Manifest }:
                return new Reply(200, "application/manifest+json", Pages.PageAssets.Manifest);
            case { Kind: RouteKind.Icon } place:
                return Pages.PageAssets.Icon(place.Step) is { } icon ? new Reply(200, "image/png", icon) { Lasts = true } : Reply.NotFound([WebProblems.NoSuchPage(path)]);
            case { Kind: RouteKind.Type } place:
                return Pages.PageAssets.Font(place.Step) is { } font ? new Reply(200, "font/ttf", font) { Lasts = true } : Reply.NotFound([WebProblems.NoSuchPage(path)]);
            case { Kind: RouteKind.Pair } when pairing is not null:
                return Reply.Page(PairPage.Of(tokens.Of(who.Device), context.Request.Query["code"], context.Request.Query["to"], Fingerprint));
            case { Kind: not (RouteKind.None or RouteKind.Pair) } when !who.MayRead:
                return Reply.SeeOther(PairPage.Address(path));
            case { Kind: RouteKind.Shelf }:
                return Within(bench => Reading.Shelf(bench, context.Request.Query, request.Lan is not null && who.MayRecord ? Address(context.Request) : null));
            case { Kind: RouteKind.Jar } place:
                return Known(context, () => cache.Get(path, () => Within(bench => Reply.Of(Reading.Jar(bench, place.Jar), Reply.NotFound))));
            case { Kind: RouteKind.LabelPdf } place:
                return Known(context, () => Within(bench => Reading.LabelPdf(bench, place.Jar)));
            case { Kind: RouteKind.LabelFile } place:
                return Known(context, () => Within(bench => Reading.LabelFile(bench, place.Step)));
            case { Kind: RouteKind.Done } place:
                return recording.Done(place.Step);
            case { Kind: RouteKind.Paper } place:
                return recording.Paper(place.Step);
            case { Kind: RouteKind.Can }:
                return who.MayRecord ? Within(bench => Cans(bench, who, new FormValues(new Dictionary<string, string>()), [])) : Reply.SeeOther(PairPage.Address(path));
            case { Kind: RouteKind.Copy or RouteKind.Devices } when !who.MayRecord:
                return Reply.SeeOther(PairPage.Address(path));
            case { Kind: RouteKind.Copy } when SameOrigin.IsForeign(context.Request):
                return Reply.Refused(403, WebProblems.ForeignForm());
            case { Kind: RouteKind.Copy } place:
                return Within(bench => copies.Take(bench, place.Step));
            case { Kind: RouteKind.Devices }:
                return Paired(who, []);
            case { Kind: RouteKind.Steps }:
                return Reply.Page(StepsPage.Of());
            case { Kind: RouteKind.Form } place:
                return who.MayRecord ? Known(context, () => recording.Blank(place, who, FormBody.Given(context.Request.Query), Came(context.Request))) : Reply.SeeOther(PairPage.Address(path));
            default:
                return WithoutSlash(context.Request) ?? Reply.NotFound([WebProblems.NoSuchPage(path)]);
        }
    }

    /// <summary>The way to the same page without the slash at its end, with which a place that only keeps files has it; null where that is none either.</summary>
    private static Reply? WithoutSlash(HttpRequest asked) => asked.Path.ToUriComponent() is ['/', .. { Length: > 1 }] path && path.EndsWith('/') && Route.Of(asked.Path.Value![..^1]).Kind != RouteKind.None
        ? Reply.Moved($"{path[..^1]}{asked.QueryString.ToUriComponent()}")
        : null;

    private async Task<Reply> Take(HttpContext context, string path, Client who)
    {
        var place = Route.Of(path);
        if (place.Kind is not (RouteKind.Form or RouteKind.Pair or RouteKind.Can or RouteKind.Devices))
        {
            return place.Kind is RouteKind.None ? Reply.Refused(404, WebProblems.NoSuchPage(path)) : Reply.Refused(405, WebProblems.MethodNotAllowed("POST"));
        }

        if (!SameOrigin.Holds(context.Request))
        {
            return Reply.Refused(403, WebProblems.ForeignForm());
        }

        if (place.Kind is not RouteKind.Pair && !who.MayRecord)
        {
            return Reply.Refused(401, WebProblems.NotPaired());
        }

        if (place is { Kind: RouteKind.Form } && PhotoBody.Is(context.Request) && Recording.TakesPhoto(place))
        {
            var photo = await photos.Read(context.Request, From(context), mark => tokens.Fits(mark, who.Device));
            return photo.Problems.Count == 0 ? Within(bench => recording.Found(bench, place, who, photo.Codes)) : recording.Unread(place, who, photo.Problems, photo.Status);
        }

        var (fields, status, problem) = await FormBody.Read(context.Request);
        if (problem is not null)
        {
            return Reply.Refused(status, problem);
        }

        var ours = tokens.Fits(fields.GetValueOrDefault("token"), who.Device);
        return place.Kind switch
        {
            RouteKind.Form => recording.Take(place, who, new FormValues(fields) { Came = Came(context.Request) }, ours),
            RouteKind.Devices => ours ? Part(who, fields) : Reply.Refused(403, WebProblems.OldForm()),
            RouteKind.Can => Within(bench => ours ? Enter(bench, who, new FormValues(fields)) : Cans(bench, who, new FormValues(fields), new Faults([WebProblems.OldPage()]), 403)),
            _ => ours ? Pair(context, fields) : Reply.Refused(403, WebProblems.OldForm()),
        };
    }

    /// <summary>A can entered; sent twice, it is the same can.</summary>
    private Reply Enter(Workbench bench, Client who, FormValues entry) =>
        CanEntry.Do(bench, entry).TryGet(out _, out var problems) ? Reply.SeeOther("/can") : Cans(bench, who, entry, problems);

    private Reply Cans(Workbench bench, Client who, FormValues entry, Faults problems, int refused = 422) => CanBook.All(bench).TryGet(out var cans, out var faults)
        ? Reply.Page(CanPage.Of(bench, tokens.Of(who.Device), cans, entry, problems), problems.Count > 0 ? refused : 200)
        : Reply.Refused(503, faults);

    /// <summary>The devices that may record.</summary>
    private Reply Paired(Client who, Faults problems) => devices.All().TryGet(out var all, out var faults)
        ? Reply.Page(DevicesPage.Of(tokens.Of(who.Device), all, who.Paired, problems), problems.Count > 0 ? 422 : 200)
        : Reply.Refused(503, faults);

    /// <summary>Takes a device's right to record.</summary>
    private Reply Part(Client who, IReadOnlyDictionary<string, string> fields) =>
        devices.Revoke(fields.GetValueOrDefault("device") ?? "").TryGet(out _, out var problems) ? Reply.SeeOther("/devices") : Paired(who, problems);

    /// <summary>The address by which somebody came; null for this machine's own, which leads nobody else here.</summary>
    private static string? Came(HttpRequest asked) =>
        Uri.TryCreate(Address(asked), UriKind.Absolute, out var address) && !address.IsLoopback ? address.GetLeftPart(UriPartial.Authority) : null;

    private static string Address(HttpRequest asked) => $"{asked.Scheme}://{asked.Host.Value}";

    private Reply Pair(HttpContext context, IReadOnlyDictionary<string, string> fields)
    {
        var entry = new FormValues(fields);
        var name = entry.Fact("name", PairPage.Name);
        var code = entry.Text("code") ?? "";
        return pairing is null ? Reply.Refused(404, WebProblems.NoSuchPage("/pair"))
            : !entry.Then(() => pairing.Pair(code, name ?? "a device", From(context), request.Door.Now)).TryGet(out var token, out var problems) ? Reply.Refused(403, problems)
            : Reply.SeeOther(PairPage.Back(fields.GetValueOrDefault("to"))) with { Cookie = RequestAuthenticator.Kept(token, request.Encrypted) };
    }

    /// <summary>A page of one jar. Who guesses numbers that are not there is soon sent away from those; what is there is shown all the same.</summary>
    private Reply Known(HttpContext context, Func<Reply> page)
    {
        var reply = page();
        return reply.Status == 404 && TooFast(guesses.Count, context) ? Reply.Refused(429, WebProblems.TooFast()) : reply;
    }

    private bool TooFast(Func<IPAddress, bool> fits, HttpContext context) => request.Lan is not null && !fits(From(context));

    private static IPAddress From(HttpContext context) => context.Connection.RemoteIpAddress ?? IPAddress.None;

    private Reply Within(Func<Workbench, Reply> page) =>
        request.Door.Open().TryGet(out var bench, out var problems) ? page(bench) : Reply.Refused(503, problems);
}
