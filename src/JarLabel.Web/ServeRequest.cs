using System.Net;

namespace JarLabel.Web;

/// <summary>How the pages are to be served.</summary>
/// <param name="Port">The port; 0 for any that is free.</param>
/// <param name="Lan">The one address of this machine to listen on; null for this machine alone.</param>
/// <param name="Open">True lets everybody on that network read; else only paired devices. Recording always needs a paired device.</param>
/// <param name="Door">How the shop is opened for each request.</param>
/// <param name="Say">Where a line for the person at the terminal goes.</param>
public sealed record ServeRequest(int Port, IPAddress? Lan, bool Open, BenchDoor Door, Action<string> Say);
