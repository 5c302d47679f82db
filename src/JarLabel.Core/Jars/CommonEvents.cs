namespace JarLabel.Core.Jars;

/// <summary>The two events that every jar begins with, <see cref="Mixed"/> and <see cref="Labelled"/>, read and written member by member.
/// <see cref="JarEventContext"/> says how events are kept, and gives the same bytes; but getting ready for these two it takes a twentieth
/// of the time that mixing a jar takes. Whatever is not exactly as written here is left to it.</summary>
internal static class CommonEvents
{
    private const string Day = "yyyy-MM-dd";

    /// <summary>One line of JSON; null for another event.</summary>
    internal static string? Write(JarEvent happened) => happened switch
    {
        Mixed mixed => JsonLine.Of(json => Write(json, mixed)),
        Labelled labelled => JsonLine.Of(json => Write(json, labelled)),
        _ => null,
    };

    /// <summary>The event; null where the library has to look at it.</summary>
    internal static JarEvent? Read(JsonElement line)
    {
        var members = new JsonMembers(line);
        JarEvent? happened = members.Text("event") switch
        {
            nameof(Mixed) => Mixed(members),
            nameof(Labelled) => Labelled(members),
            _ => null,
        };
        return members.AllTaken ? happened : null;
    }

    private static void Write(Utf8JsonWriter json, Mixed mixed)
    {
        json.WriteString("event", nameof(Mixed));
        Write(json, mixed.Contents);
        json.WriteStartObject("container");
        json.WriteString("material", mixed.Container.Material.ToString());
        Number(json, "milliliters", mixed.Container.Holds?.Milliliters);
        json.WriteEndObject();
        Write(json, mixed.Dates);
        json.WriteString("shelf", mixed.Shelf);
        json.WriteNumber("benchCelsius", mixed.Bench.DegreesCelsius);
        Text(json, "by", mixed.By);
        Text(json, "job", mixed.Job);
        Text(json, "note", mixed.Note);
        Number(json, "bag", mixed.Bag?.Value);
        Number(json, "bottle", mixed.Bottle?.Value);
        json.WriteString("at", mixed.At);
    }

    private static void Write(Utf8JsonWriter json, Contents contents)
    {
        json.WriteStartObject("contents");
        json.WriteStartArray("resins");
        foreach (var resin in contents.Resins)
        {
            json.WriteStartObject();
            json.WriteString("grade", resin.Grade);
            json.WriteNumber("grams", resin.Weight.Grams);
            Text(json, "flakeDate", resin.FlakeDate?.ToString(Day, CultureInfo.InvariantCulture));
            if (resin.Cloudy)
            {
                json.WriteBoolean("cloudy", true);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("solvents");
        foreach (var solvent in contents.Solvents)
        {
            json.WriteStartObject();
            json.WriteString("solvent", solvent.Solvent);
            json.WriteNumber("milliliters", solvent.Poured.Milliliters);
            json.WriteNumber("grams", solvent.Weight.Grams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, KeepingDates dates)
    {
        json.WriteStartObject("dates");
        json.WriteString("ready", dates.Ready);
        Text(json, "testFrom", dates.TestFrom.ToString(Day, CultureInfo.InvariantCulture));
        Text(json, "useBy", dates.UseBy.ToString(Day, CultureInfo.InvariantCulture));
        if (dates.Basis is { } basis)
        {
            json.WriteStartObject("basis");
            json.WriteNumber("tests", basis.Tests);
            json.WriteNumber("related", basis.Related);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Labelled labelled)
    {
        json.WriteString("event", nameof(Labelled));
        json.WriteNumber("revision", labelled.Revision);
        json.WriteString("file", labelled.File);
        json.WriteString("design", labelled.Design);
        json.WriteString("sheet", labelled.Sheet);
        json.WriteNumber("position", labelled.Position);
        json.WriteString("payload", labelled.Payload);
        Text(json, "sha256", labelled.Sha256);
        Number(json, "copies", labelled.Copies);
        json.WriteString("at", labelled.At);
    }

    private static void Text(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } written)
        {
            json.WriteNumber(name, written);
        }
    }

    private static Mixed Mixed(JsonMembers from) => new(
        from.Moment("at"),
        from.Inner("contents", contents => new Contents(
            contents.List("resins", resin => new ResinPart(resin.Text("grade"), Mass.FromGrams(resin.Number("grams")), resin.Has("flakeDate") ? resin.Date("flakeDate") : null) { Cloudy = resin.Has("cloudy") && resin.True("cloudy") }),
            contents.List("solvents", solvent => new SolventPart(solvent.Text("solvent"), Volume.FromMilliliters(solvent.Number("milliliters")), Mass.FromGrams(solvent.Number("grams")))))),
        from.Inner("container", container => new Container(container.Material("material"), container.Has("milliliters") ? Volume.FromMilliliters(container.Number("milliliters")) : null)),
        from.Inner("dates", dates => new KeepingDates(dates.Moment("ready"), dates.Date("testFrom"), dates.Date("useBy"))
        {
            Basis = dates.Has("basis") ? dates.Inner("basis", basis => new KeepingBasis(basis.Count("tests"), basis.Count("related"))) : null,
        }),
        from.Text("shelf"),
        Temperature.FromDegreesCelsius(from.Number("benchCelsius")),
        from.OptionalText("by"),
        from.OptionalText("job"),
        from.OptionalText("note"))
    {
        Bag = from.Supply("bag"),
        Bottle = from.Supply("bottle"),
    };

    private static Labelled Labelled(JsonMembers from) => new(
        from.Moment("at"), from.Count("revision"), from.Text("file"), from.Text("design"), from.Text("sheet"), from.Count("position"), from.Text("payload"))
    {
        Sha256 = from.OptionalText("sha256"),
        Copies = from.Has("copies") ? from.Count("copies") : null,
    };
}
