namespace JarLabel.Web.Serving;

/// <summary>The pages there are.</summary>
internal enum RouteKind
{
    /// <summary>None of ours.</summary>
    None,

    /// <summary>All jars.</summary>
    Shelf,

    /// <summary>The script of the forms.</summary>
    Script,

    /// <summary>What keeps pages that were looked at.</summary>
    Keeper,

    /// <summary>What stands on a home screen.</summary>
    Manifest,

    /// <summary>Its icon.</summary>
    Icon,

    /// <summary>The typeface of the pages, which is the labels' own.</summary>
    Type,

    /// <summary>Where a device is paired.</summary>
    Pair,

    /// <summary>One jar.</summary>
    Jar,

    /// <summary>A jar's label, to print.</summary>
    LabelPdf,

    /// <summary>A file of the shop's folder of labels, to print.</summary>
    LabelFile,

    /// <summary>The shop's own cans, and the form to enter one.</summary>
    Can,

    /// <summary>The whole shop in a file to take away.</summary>
    Copy,

    /// <summary>The devices that may record.</summary>
    Devices,

    /// <summary>Everything that can be done.</summary>
    Steps,

    /// <summary>A form: a new jar, or a step of one.</summary>
    Form,

    /// <summary>What was just recorded.</summary>
    Done,

    /// <summary>How its label stands at the printer.</summary>
    Paper,
}
