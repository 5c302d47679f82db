namespace JarLabel.Tests.Printing;

/// <summary>One request that a printer got, and the line to answer on.</summary>
internal sealed record Asked(IppOperation Operation, IppMessage Message, byte[] Document, NetworkStream Line, TcpClient Client)
{
    public IppGroup Group(IppTag tag) => Message.First(tag);

    public async Task Respond(string status, string type, byte[] body)
    {
        await Line.WriteAsync(Encoding.ASCII.GetBytes($"HTTP/1.1 {status}\r\nContent-Type: {type}\r\nContent-Length: {body.Length}\r\n\r\n"));
        await Line.WriteAsync(body);
    }
}
