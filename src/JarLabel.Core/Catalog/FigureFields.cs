namespace JarLabel.Core.Catalog;

/// <summary>Figures with their sources, as data files write them: <c>{ "value": 46.07, "source": "..." }</c>.</summary>
internal static class FigureFields
{
    internal static Figure Figure(this FieldReader fields, string name, decimal least, decimal most) =>
        fields.Member(name, inner => new Figure(inner.Exact("value", least, most), inner.Text("source")));

    internal static Figure? OptionalFigure(this FieldReader fields, string name, decimal least, decimal most) =>
        fields.Has(name) ? fields.Figure(name, least, most) : null;

    internal static IReadOnlyList<string> OptionalTexts(this FieldReader fields, string name) => fields.Has(name) ? fields.Texts(name) : [];

    internal static IReadOnlyList<T> OptionalList<T>(this FieldReader fields, string name, Func<FieldReader, T> read) =>
        fields.Has(name) ? fields.List(name, read) : [];

    internal static bool OptionalFlag(this FieldReader fields, string name) => fields.Has(name) && fields.Flag(name);
}
