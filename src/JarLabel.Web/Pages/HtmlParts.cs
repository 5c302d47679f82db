using System.Runtime.CompilerServices;

namespace JarLabel.Web.Pages;

/// <summary>Gathers the parts of an interpolated piece of HTML and escapes every value.</summary>
[InterpolatedStringHandler]
internal readonly struct HtmlParts(int literalLength, int formattedCount)
{
    private readonly StringBuilder text = new(literalLength + (16 * formattedCount));

    public void AppendLiteral(string value) => text.Append(value);

    public void AppendFormatted(string? value) => text.Append(Html.Escape(value));

    public void AppendFormatted(int value) => text.Append(value.ToString(CultureInfo.InvariantCulture));

    public void AppendFormatted(JarNumber value) => AppendFormatted(value.ToString());

    public void AppendFormatted(Markup value) => text.Append(value.Text);

    public void AppendFormatted(IEnumerable<Markup> values)
    {
        foreach (var value in values)
        {
            text.Append(value.Text);
        }
    }

    public override string ToString() => text.ToString();
}
