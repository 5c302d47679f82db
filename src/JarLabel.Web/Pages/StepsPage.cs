namespace JarLabel.Web.Pages;

/// <summary>Everything that can be done and looked at beside the steps of one jar.</summary>
internal static class StepsPage
{
    internal static string Of() => Frame.Page(
        "All steps",
        Html.Of(
            $"""
            <h1>All steps</h1>
            {Part("To do", StepForms.OfShop.Values.Where(form => form.Step is { Looks: false, OnPages: null }))}
            {Part("To look at", StepForms.OfShop.Values.Where(form => form.Step.Looks))}
            <p>What is done with one jar stands on the jar's own page.</p>
            """),
        Frame.Served);

    private static Markup Part(string title, IEnumerable<StepForm> forms) => Html.Of(
        $"""<h2>{title}</h2><nav class="do" aria-label="{title}">{forms.Select(form => Html.Of($"""<a class="go" href="/{form.Name}">{form.Step.Title}</a>"""))}</nav>""");
}
