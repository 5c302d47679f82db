using JarLabel.Core;
using JarLabel.Core.Catalog;

namespace JarLabel.Bench;

/// <summary>What can go wrong at the bench beside the batch itself.</summary>
internal static class BenchProblems
{
    internal static Problem FolderUnreadable(string folder, string why) =>
        new("JL221", $"The shop's files in this folder cannot be read: {why} Give the folder back its read permission, or take it away.", folder);

    internal static Problem StoragePassed(StorageLimit limit) =>
        new("JL176", $"{limit.Says} ({limit.Rule}; a workplace rule, and the local fire code comes first.)", "--container");

    internal static Problem ShelfOverLimit(string shelf, StorageLimit limit) =>
        new("JL177", $"Shelf {Quoted.Of(shelf)} holds more than {limit.Amount}. {limit.Says} ({limit.Rule}; a workplace rule, and the local fire code comes first.)", "--shelf");

    internal static Problem PictureOfManyPages(string file, int pages) =>
        new("JL331", $"{pages} pages do not fit one picture; write a PDF, such as labels.pdf, or ask for fewer labels.", file);

    internal static Problem UnknownFileKind(string file) =>
        new("JL332", $"Read {Quoted.Of(file)} as the file to write; its ending says what it becomes: .pdf, .png or .svg, such as label.pdf.", "--out");
}
