namespace JarLabel.Web.Pages;

/// <summary>Text that is HTML already. Only <see cref="Html"/> makes it, and everything else that goes into a page is escaped there.</summary>
public readonly record struct Markup
{
    internal Markup(string text) => Text = text;

    /// <summary>The HTML.</summary>
    public string Text => field ?? "";

    /// <inheritdoc/>
    public override string ToString() => Text;
}
