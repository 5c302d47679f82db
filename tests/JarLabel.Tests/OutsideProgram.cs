using System.ComponentModel;

namespace JarLabel.Tests;

/// <summary>Another project's program, called as a judge of ours. A test whose judge is not installed is skipped, with the reason.</summary>
internal sealed class OutsideProgram(string name, string package)
{
    public static readonly OutsideProgram PdfToText = new("pdftotext", "poppler-utils");
    public static readonly OutsideProgram PdfToPpm = new("pdftoppm", "poppler-utils");
    public static readonly OutsideProgram PdfFonts = new("pdffonts", "poppler-utils");
    public static readonly OutsideProgram PdfInfo = new("pdfinfo", "poppler-utils");
    public static readonly OutsideProgram PdfImages = new("pdfimages", "poppler-utils");
    public static readonly OutsideProgram Qpdf = new("qpdf", "qpdf");
    public static readonly OutsideProgram ZbarImg = new("zbarimg", "zbar-tools");
    public static readonly OutsideProgram ZXingReader = new("ZXingReader", "zxing-cpp-tools");
    public static readonly OutsideProgram QrEncode = new("qrencode", "qrencode");
    public static readonly OutsideProgram MuTool = new("mutool", "mupdf-tools");
    public static readonly OutsideProgram Ghostscript = new("gs", "ghostscript");

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Runs it to its end and gives what it printed; fails the test when it ends with a fault or takes over a minute.</summary>
    public string Run(params string[] arguments)
    {
        using var process = Start(arguments);
        var complaints = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{name} did not end within {Patience.TotalSeconds} s.");
        }

        var printed = output.GetAwaiter().GetResult();
        Assert.True(process.ExitCode == 0, $"{name} ended with {process.ExitCode}: {complaints.GetAwaiter().GetResult()}{printed}");
        return printed;
    }

    private Process Start(string[] arguments)
    {
        try
        {
            return Process.Start(new ProcessStartInfo(name, arguments)
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                UseShellExecute = false,
            })!;
        }
        catch (Win32Exception)
        {
            Assert.Skip($"{name} is not installed (Debian package {package}).");
            throw;
        }
    }
}
