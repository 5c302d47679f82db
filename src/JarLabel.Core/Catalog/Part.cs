namespace JarLabel.Core.Catalog;

/// <summary>One part of a stated composition: so many parts, or what a data sheet leaves open, from so many percent to so many.</summary>
/// <param name="Of">Id of a substance or of another solvent.</param>
/// <param name="Least">How many parts at the least.</param>
/// <param name="Most">How many at the most; the same where it is known.</param>
public sealed record Part(string Of, decimal Least, decimal Most)
{
    /// <summary>A part that is known.</summary>
    public Part(string of, decimal parts)
        : this(of, parts, parts)
    {
    }

    /// <summary>True where the data sheet leaves it open.</summary>
    public bool IsRange => Least != Most;

    /// <summary>How many parts; half-way where it is left open.</summary>
    public decimal Parts => (Least + Most) / 2;

    /// <summary>Whatever the others leave of a hundred.</summary>
    internal static Part Rest(string of) => new(of, 0, 100);

    internal static Part Read(FieldReader fields)
    {
        var of = fields.Text("of");
        if (fields.OptionalFlag("rest"))
        {
            return Rest(of);
        }

        if (!fields.Has("from") && !fields.Has("to"))
        {
            return new(of, fields.Exact("parts", 0.000001m, 1_000_000));
        }

        var part = new Part(of, fields.Has("from") ? fields.Exact("from", 0, 100) : 0, fields.Has("to") ? fields.Exact("to", 0, 100) : 100);
        if (part.Least > part.Most)
        {
            fields.Refuse("from", "It is more than \"to\"; write the smaller percentage first, such as \"from\": 30, \"to\": 60.");
        }

        return part;
    }
}
