using HarfBuzzSharp;

namespace JarLabel.Render.Text;

/// <summary>HarfBuzz's font subsetter, which our binding of that library carries but does not speak for.</summary>
internal static unsafe class Subsetter
{
    private const uint KeepGlyphNumbers = 0x2;
    private const int DropTables = 3;

    // Lines are shaped with the whole font before; what draws them needs no rules for it.
    private static readonly uint[] Unneeded = [new Tag('G', 'S', 'U', 'B'), new Tag('G', 'P', 'O', 'S'), new Tag('G', 'D', 'E', 'F'), new Tag('m', 'e', 't', 'a')];

    private static readonly Lazy<nint> Library = new(() => NativeLibrary.Load("libHarfBuzzSharp", typeof(Blob).Assembly, null));

    /// <summary>The part of a font that these letters and glyphs need, its glyphs under their old numbers; null where there is no
    /// subsetter.</summary>
    internal static byte[]? Part(FontFile file, IEnumerable<uint> letters, IEnumerable<ushort> glyphs)
    {
        if (!NativeLibrary.TryGetExport(Library.Value, "hb_subset_or_fail", out var subset))
            return null;
        using var blob = new Blob(file.Address, file.Length, MemoryMode.ReadOnly);
        using var whole = new HarfBuzzSharp.Face(blob, 0);
        var input = ((delegate* unmanaged<nint>)Find("hb_subset_input_create_or_fail"))();
        try
        {
            ((delegate* unmanaged<nint, uint, void>)Find("hb_subset_input_set_flags"))(input, KeepGlyphNumbers);
            Add(((delegate* unmanaged<nint, nint>)Find("hb_subset_input_unicode_set"))(input), letters);
            Add(((delegate* unmanaged<nint, nint>)Find("hb_subset_input_glyph_set"))(input), glyphs.Select(glyph => (uint)glyph));
            Add(((delegate* unmanaged<nint, int, nint>)Find("hb_subset_input_set"))(input, DropTables), Unneeded);
            var part = ((delegate* unmanaged<nint, nint, nint>)subset)(whole.Handle, input);
            return part == 0 ? null : BytesOf(part);
        }
        finally
        {
            ((delegate* unmanaged<nint, void>)Find("hb_subset_input_destroy"))(input);
        }
    }

    private static void Add(nint set, IEnumerable<uint> members)
    {
        var add = (delegate* unmanaged<nint, uint, void>)Find("hb_set_add");
        foreach (var member in members)
            add(set, member);
    }

    private static byte[] BytesOf(nint face)
    {
        var blob = ((delegate* unmanaged<nint, nint>)Find("hb_face_reference_blob"))(face);
        uint length;
        var data = ((delegate* unmanaged<nint, uint*, byte*>)Find("hb_blob_get_data"))(blob, &length);
        var bytes = new ReadOnlySpan<byte>(data, (int)length).ToArray();
        ((delegate* unmanaged<nint, void>)Find("hb_blob_destroy"))(blob);
        ((delegate* unmanaged<nint, void>)Find("hb_face_destroy"))(face);
        return bytes;
    }

    private static nint Find(string name) => NativeLibrary.GetExport(Library.Value, name);
}
