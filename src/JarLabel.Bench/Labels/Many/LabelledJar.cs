using JarLabel.Core.Jars;
using JarLabel.Store.Sheets;

namespace JarLabel.Bench.Labels.Many;

/// <summary>What the ledger has to keep of one jar's labels of a long print.</summary>
/// <param name="Jar">The jar's number.</param>
/// <param name="Revision">The revision the labels speak of.</param>
/// <param name="Payload">What their code says.</param>
/// <param name="Redated">The dates it gets with this label; null where those on record still hold.</param>
/// <param name="First">Where the first of them stands.</param>
/// <param name="Copies">How many there are.</param>
internal readonly record struct LabelledJar(int Jar, int Revision, string Payload, Redated? Redated, SheetPlace First, int Copies);
