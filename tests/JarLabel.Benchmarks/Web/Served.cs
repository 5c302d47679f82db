using System.Diagnostics;
using System.Net;
using JarLabel.Core.Jars;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using JarLabel.Operations;
using JarLabel.Operations.Mixing;
using JarLabel.Web;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using UnitsNet;

namespace JarLabel.Benchmarks.Web;

/// <summary>A server in a process of its own.</summary>
internal sealed class Served : IDisposable
{
    private readonly Process process;

    internal Served(string name)
    {
        process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [WebContest.Child, name]) { RedirectStandardOutput = true, RedirectStandardInput = true })!;
        Address = new Uri(process.StandardOutput.ReadLine()!);
    }

    internal Uri Address { get; }

    internal double Megabytes
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64 / 1e6;
        }
    }

    public void Dispose()
    {
        process.StandardInput.Close();
        process.WaitForExit();
        process.Dispose();
    }

    /// <summary>The child: serves until its standard input ends.</summary>
    internal static void Serve(string name)
    {
        if (name == "jar")
        {
            Jar();
        }
        else
        {
            Hello();
        }
    }

    private static void Jar()
    {
        var folder = Directory.CreateTempSubdirectory("jarlabel-web-");
        try
        {
            var request = new WorkbenchOptions(folder.FullName, TimeProvider.System.GetLocalNow().DateTime);
            Mix(Workbench.Open(request, _ => null).Require());
            using var server = Server.Start(new ServeRequest(0, null, false, new WorkbenchFactory(request, () => TimeProvider.System.GetLocalNow().DateTime), Console.Error.WriteLine)).Require();
            Console.WriteLine(server.Address);
            Console.In.ReadToEnd();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Mix(Workbench bench) => MixJar.Do(bench, new MixRequest(
        bench.Catalog.Grades.Named("garnet").Require(),
        bench.Catalog.Solvents.Named("denatured-unknown").Require(),
        new BatchRequest(PoundCut.FromPoundsPerUsGallon(1.5), Volume.FromMilliliters(350)),
        new Container(ContainerMaterial.Glass))).Require();

    private static void Hello()
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        using var web = (IDisposable)builder.Build();
        var app = (WebApplication)web;
        var hello = "hello"u8.ToArray();
        app.Run(context =>
        {
            context.Response.ContentLength = hello.Length;
            return context.Response.Body.WriteAsync(hello).AsTask();
        });
        app.StartAsync().GetAwaiter().GetResult();
        Console.WriteLine(app.Urls.First());
        Console.In.ReadToEnd();
    }
}
