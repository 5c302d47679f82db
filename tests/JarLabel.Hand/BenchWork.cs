using System.Globalization;
using System.Text;
using JarLabel.Core;
using JarLabel.Store;

namespace JarLabel.Hand;

/// <summary>Steps as the bench makes them: a mix is two events and a label in a new jar, a thin two events and a new label.</summary>
public static class BenchWork
{
    private const string At = "2026-03-09T14:30:00";

    public static Result<int> Mix(Ledger ledger, int keeps = 245)
    {
        return ledger.Record<int>(step => Mix(step, keeps));
    }

    public static Result<int> Mix(LedgerStep step, int keeps = 245)
    {
        var jar = step.NextNumber(SubjectKind.Jar);
        step.Append(Subject.Jar(jar), At, "Mixed", 1, Body($"\"ml\":402.5,\"shelf\":\"main\",\"keeps\":{keeps}"));
        WriteLabel(step, jar, 1);
        return jar;
    }

    public static Result<int> Thin(Ledger ledger, int jar)
    {
        return ledger.Record<int>(step =>
        {
            var revision = step.EventsOf(Subject.Jar(jar))[^1].Revision + 1;
            step.Append(Subject.Jar(jar), At, "Thinned", revision, Body("\"ml\":12.25"));
            WriteLabel(step, jar, revision);
            return revision;
        });
    }

    /// <summary>The label's bytes, which anybody can make again from its name.</summary>
    public static byte[] LabelOf(int jar, int revision)
    {
        var line = string.Create(CultureInfo.InvariantCulture, $"jar {jar} revision {revision}\n");
        return Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(line, 400)));
    }

    private static void WriteLabel(LedgerStep step, int jar, int revision)
    {
        var file = step.Stage(string.Create(CultureInfo.InvariantCulture, $"labels/{jar}.pdf"), LabelOf(jar, revision));
        step.Append(Subject.Jar(jar), At, "Labelled", revision, Body($"\"file\":\"{file.Path}\",\"sha256\":\"{file.Sha256}\""));
    }

    private static string Body(string members) => "{" + members + "}";
}
