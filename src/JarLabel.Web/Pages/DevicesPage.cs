namespace JarLabel.Web.Pages;

/// <summary>The telephones and tablets that may record, and the way to take one's right away.</summary>
internal static class DevicesPage
{
    /// <param name="token">The mark that a form is ours.</param>
    /// <param name="devices">The devices, the oldest first.</param>
    /// <param name="own">The one that asks; null for this machine.</param>
    /// <param name="problems">What hindered it.</param>
    internal static string Of(string token, IReadOnlyList<Device> devices, Device? own, IReadOnlyList<Problem> problems) => Frame.Page(
        "Devices",
        Html.Of(
            $"""
            <h1>Devices</h1>
            {ProblemPage.List(problems)}
            {(devices.Count == 0
                ? Html.Own("<p>No telephone or tablet is paired.</p>")
                : Html.Own("<p>These may record. One that is taken away must be paired again before it records anything more.</p>"))}
            {devices.Select(device => One(token, device, device == own))}
            <p class="do"><a class="go" href="/shop/show">Settings</a></p>
            """),
        Frame.Served);

    private static Markup One(string token, Device device, bool own) => Html.Of(
        $"""
        <form method="post" action="/devices" autocomplete="off">{FormPage.Hidden("token", token)}{FormPage.Hidden("device", device.Id)}
        <h2>{device.Name}</h2><p>paired {DateWords.Of(device.Paired)}{(own ? "; it is the one in your hand" : "")}</p>
        <button class="quiet" aria-label="Take {device.Name} away">Take it away</button></form>
        """);
}
