namespace JarLabel.Web;

/// <summary>What can go wrong only because somebody comes over the network.</summary>
public static class WebProblems
{
    internal static Problem ForeignHost(string read, IEnumerable<string> hosts) =>
        new("JL601", $"Read {Quoted.Of(read)} as the name of this server; it answers to {string.Join(", ", hosts)}. Open the address that the server showed when it was started, or settle the name that is meant as the address where the codes on labels lead.");

    internal static Problem NoSuchPage(string read) =>
        new("JL602", $"There is no page {Quoted.Of(read)}; a jar's page is its number, such as /J/142-5.");

    internal static Problem ForeignForm() =>
        new("JL603", "This did not come from a form of this server. Open the jar's page here and use its buttons.");

    internal static Problem OldForm() =>
        new("JL604", "This form was opened before the server was started, or by another device. Go back, load the page anew and fill it in again.");

    internal static Problem OldPage() =>
        new("JL604", "This page was opened before the server was started anew, or by another device. What you typed is still here: send it again.");

    /// <summary>A form of an earlier run of the server, or of another device.</summary>
    /// <param name="look">The step that shows what was recorded.</param>
    internal static Problem MayBeRecorded(Message look) =>
        new("JL604", Message.Of($"This form was opened before the server was started anew, or by another device; it may be recorded already. {look} shows what is recorded. Send it again from here only if it is not there."));

    /// <summary>A form that was sent, changed and sent again.</summary>
    /// <param name="look">The step that shows what was recorded.</param>
    internal static Problem RecordedOtherwise(Message look) =>
        new("JL621", Message.Of($"What was sent from this form before is recorded already; what stands in it now is not yet. {look} shows what is recorded. Send it again from here if this is to be recorded too."));

    internal static Problem NotPaired() =>
        new("JL605", "This device may look and not record. Pair it first with the code that the server shows on its screen.");

    internal static Problem WrongCode(string read) =>
        new("JL606", $"Read {Quoted.Of(read)}, which is not the pairing code; it is digits, such as 0417 2935, and stands on the screen where the server was started. It may have changed: read it there anew.", "code");

    internal static Problem PairingClosed() =>
        new("JL607", "There were too many wrong pairing codes from this device. Wait ten minutes, then give the code that stands on the server's screen; other devices can be paired meanwhile.");

    internal static Problem PairingSlow() =>
        new("JL666", "Very many wrong pairing codes come in from many devices. Wait a minute and give the code once more.");

    internal static Problem TooFast() =>
        new("JL608", "Too many requests from this device; wait a minute.");

    internal static Problem TooLarge(long most) =>
        new("JL609", string.Create(CultureInfo.InvariantCulture, $"The form is too large or too slow in coming; at most {most / 1024} KB within 15 seconds are taken."));

    internal static Problem OldPhoto() =>
        new("JL604", "This page was opened before the server was started anew, or by another device. Take the photo once more from here.");

    internal static Problem PhotoTooLarge(long most) =>
        new("JL660", string.Create(CultureInfo.InvariantCulture, $"This photo is larger than {most / (1024 * 1024)} MB, which is as much as is taken. Let the camera take smaller pictures, such as 4000 × 3000 dots, or type the number beside the code, such as 142-5."));

    internal static Problem NoPhoto() =>
        new("JL661", "No photo came, or an empty one. Take one first, or type the number beside the code, such as 142-5.");

    internal static Problem PhotoCutOff() =>
        new("JL662", "The photo came only in part. Go nearer to the wireless and send it once more, or type the number beside the code, such as 142-5.");

    internal static Problem PhotoTooSlow() =>
        new("JL663", "The photo was too long on its way; a minute and a half is waited for one. Go nearer to the wireless and send it once more, or type the number beside the code, such as 142-5.");

    internal static Problem PhotosBusy() =>
        new("JL664", "Other photos are being read just now. Send it once more in a moment, or type the number beside the code, such as 142-5.");

    internal static Problem PhotoTooHard() =>
        new("JL665", "No code was found in this photo in the time that is given to one. Take it from nearer, with little beside the label, or type the number beside the code, such as 142-5.");

    internal static Problem NotAForm(string? read) =>
        new("JL610", $"Read {Quoted.Of(read ?? "nothing")} as the kind of the request; a form of this server is wanted, which is application/x-www-form-urlencoded.");

    internal static Problem MethodNotAllowed(string read) =>
        new("JL611", $"Read {Quoted.Of(read)} as the method; a page is looked at with GET, a step is recorded with POST.");

    internal static Problem PortTaken(string address, string why) =>
        new("JL612", Message.Of($"{address} cannot be opened: {why} Choose another port, such as {new InputName("port", "5081")}, or an address of this machine for {new InputName("lan")}."), "port");

    /// <summary>No address to listen on.</summary>
    public static Problem NotAnAddress(string read) =>
        new("JL613", $"Read {Quoted.Of(read)} as an address of this machine; write it in figures, such as 192.168.1.20; 0.0.0.0, which means all of them, is not taken.", "lan");

    internal static Problem NoSuchDevice(string read, IEnumerable<string> known) =>
        new("JL614", $"No device {Quoted.Of(read)} is paired; known are: {string.Join(", ", known.DefaultIfEmpty("none"))}.", "device");

    /// <summary>The code of everything wrong with the list of devices.</summary>
    internal const string DevicesCode = "JL615";

    internal static Problem DevicesUnreadable(string file, string why) =>
        new(DevicesCode, $"The list of paired devices cannot be read: {why} Mend it, or take it away and pair the devices again.", file);

    internal static Problem CertificateUnreadable(string file, string why) =>
        new("JL667", $"The shop's own certificate cannot be read or written: {why} Mend it, or take it away, and another is made; devices then compare its fingerprint anew.", file);

    internal static Problem NoLabelFile(string jar) =>
        new("JL616", $"No label of jar {jar} as it is now is there to download; print it again first.");

    internal static Problem CopyNotWritten(string folder, string why) =>
        new("JL617", $"The copy cannot be written: {why} Name a folder that can be made or is yours, such as pocket.", folder);

    internal static Problem FolderInUse(string folder) =>
        new("JL618", "This folder holds other things; name a new or empty folder, or one that an earlier copy was written to, such as pocket.", folder);

    internal static Problem NoRoomForCopy(string why) =>
        new("JL650", $"No file could be made to take away: {why} Nothing of the shop is changed; make room in the temporary folder of the shop's computer, or start the server with another one, then try it again.");

    internal static Problem FaultWhilePrinting() =>
        new("JL620", "This is a fault in jarlabel. The step is recorded; look whether the label came out, and print it again if not. What happened stands on the screen where the server was started; please report it.");

    internal static Problem OurFault(string kept) =>
        new("JL619", $"This is a fault in jarlabel, not in what you did. {kept} What happened stands on the screen where the server was started; please report it.");
}
