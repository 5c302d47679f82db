using JarLabel.Benchmarks.Labels;
using JarLabel.Benchmarks.Ledgers;
using JarLabel.Benchmarks.Photos;
using JarLabel.Benchmarks.StartUp;
using JarLabel.Benchmarks.Web;

switch (args)
{
    case ["labels"]:
        Contest.Run(10_000);
        return 0;
    case ["labels", var count]:
        Contest.Run(int.Parse(count, System.Globalization.CultureInfo.InvariantCulture));
        return 0;
    case [Contest.Child, var name, var count, var file]:
        Contest.RunOne(name, int.Parse(count, System.Globalization.CultureInfo.InvariantCulture), file);
        return 0;
    case ["start", .. var programs]:
        StartContest.Run(programs);
        return 0;
    case ["ledger", var program]:
        LedgerContest.Run(program, 100_000, usedUp: true);
        return 0;
    case ["ledger", var program, "standing"]:
        LedgerContest.Run(program, 100_000, usedUp: false);
        return 0;
    case ["scan", var program]:
        ScanContest.Run(program);
        return 0;
    case ["web"]:
        WebContest.Run();
        return 0;
    case [WebContest.Child, var server]:
        WebContest.RunChild(server);
        return 0;
    default:
        Console.Error.WriteLine("labels [COUNT] | start [\"PROGRAM ARGUMENTS\"]... | ledger PROGRAM [standing] | scan PROGRAM | web   (see README.md beside this program's source)");
        return 2;
}
