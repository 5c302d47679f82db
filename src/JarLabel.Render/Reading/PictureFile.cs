namespace JarLabel.Render.Reading;

/// <summary>The dots of a picture file in grey, with what is clear on white paper. Of an animation the first picture.</summary>
internal static class PictureFile
{
    private const int Band = 32;

    /// <summary>Null when nothing of it can be read; a file that is cut off ends in white.</summary>
    internal static GreyPicture? Grey(SKCodec codec)
    {
        var info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Premul);
        if (codec.Info.ColorType == SKColorType.Gray8)
            return OfGrey(codec, info.WithColorType(SKColorType.Gray8).WithAlphaType(SKAlphaType.Opaque));
        return codec.EncodedFormat == SKEncodedImageFormat.Jpeg && codec.StartScanlineDecode(info) == SKCodecResult.Success
            ? ByBands(codec, info)
            : AtOnce(codec, info);
    }

    private static GreyPicture? OfGrey(SKCodec codec, SKImageInfo info)
    {
        var grey = GreyPicture.Of(info.Width, info.Height);
        grey.Dots.AsSpan().Fill(255);
        var handle = GCHandle.Alloc(grey.Dots, GCHandleType.Pinned);
        try
        {
            return IsSeen(codec.GetPixels(info, handle.AddrOfPinnedObject())) ? grey : null;
        }
        finally
        {
            handle.Free();
        }
    }

    private static unsafe GreyPicture? ByBands(SKCodec codec, SKImageInfo info)
    {
        var grey = GreyPicture.Of(info.Width, info.Height);
        var band = new uint[Band * info.Width];
        fixed (uint* rows = band)
        {
            for (var y = 0; y < info.Height; y += Band)
            {
                var wanted = Math.Min(Band, info.Height - y);
                var read = Math.Max(0, codec.GetScanlines((nint)rows, wanted, info.RowBytes));
                Turn(band.AsSpan(0, read * info.Width), grey.Dots.AsSpan(y * info.Width));
                if (read == wanted)
                    continue;
                grey.Dots.AsSpan((y + read) * info.Width).Fill(255);
                return y + read > 0 ? grey : null;
            }
        }

        return grey;
    }

    // The colours are turned to grey where they stand, and the rest of their memory is given back.
    private static unsafe GreyPicture? AtOnce(SKCodec codec, SKImageInfo info)
    {
        var dots = info.Width * info.Height;
        var colours = (uint*)NativeMemory.AllocZeroed((nuint)dots, sizeof(uint));
        try
        {
            if (!IsSeen(codec.GetPixels(info, (nint)colours)))
                return null;
            Turn(new ReadOnlySpan<uint>(colours, dots), new Span<byte>(colours, dots));
            colours = (uint*)NativeMemory.Realloc(colours, (nuint)dots);
            return new GreyPicture(info.Width, info.Height, new ReadOnlySpan<byte>(colours, dots).ToArray());
        }
        finally
        {
            NativeMemory.Free(colours);
        }
    }

    private static bool IsSeen(SKCodecResult result) => result is SKCodecResult.Success or SKCodecResult.IncompleteInput or SKCodecResult.ErrorInInput;

    // Green counts twice; colours are already weighed by how clear they are. Written behind what was read, so both may lie in the same place.
    private static void Turn(ReadOnlySpan<uint> colours, Span<byte> grey)
    {
        ref var from = ref MemoryMarshal.GetReference(colours);
        var i = 0;
        for (; i <= colours.Length - 16; i += 16)
        {
            var low = Vector128.Narrow(Four(ref from, i), Four(ref from, i + 4));
            var high = Vector128.Narrow(Four(ref from, i + 8), Four(ref from, i + 12));
            Vector128.Narrow(low, high).CopyTo(grey[i..]);
        }

        for (; i < colours.Length; i++)
        {
            var c = colours[i];
            grey[i] = (byte)Math.Min(255, (((c & 255) + (2 * (c >> 8 & 255)) + (c >> 16 & 255)) >> 2) + 255 - (c >> 24));
        }
    }

    private static Vector128<uint> Four(ref uint from, int at)
    {
        var c = Vector128.LoadUnsafe(ref from, (nuint)at);
        var one = Vector128.Create(255u);
        var mean = ((c & one) + ((c >>> 7) & (one << 1)) + ((c >>> 16) & one)) >>> 2;
        return Vector128.Min(one, mean + one - (c >>> 24));
    }
}
