namespace JarLabel.Tests.Web;

/// <summary>Every declared step from its page, so that a new one is covered by being declared.</summary>
public sealed class StepPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public StepPageTests()
    {
        shop.Mix("350 mL");
        shop.Stock("500 g", "1 gal");
    }

    public static TheoryData<string> Verbs => [.. Pages.Select(step => step.Verb)];

    public static TheoryData<string> NeedingVerbs => [.. Pages.Where(step => Needed(step).Any()).Select(step => step.Verb)];

    /// <summary>What is looked at of one jar is the jar's own page.</summary>
    private static IEnumerable<Step> Pages => StepTable.All.Where(step => !step.IsTypedOnly && step is not { IsOfJar: true, Looks: true });

    public void Dispose() => shop.Dispose();

    [Theory, MemberData(nameof(Verbs))]
    public async Task Its_page_shows_every_field_in_words(string verb)
    {
        var step = StepTable.Find(verb)!;
        var page = await shop.Get(Address(step));
        Assert.Equal(200, page.Status);
        Assert.Contains(step.Title, page.Seen, StringComparison.Ordinal);
        Assert.All(step.Fields.Where(field => !field.IsSubject && !field.IsTypedOnly && field.Choices is null), field => Assert.Contains($"name=\"{field.Name}\"", page.Text, StringComparison.Ordinal));
        Assert.DoesNotContain("--", page.Seen, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Verbs))]
    public async Task Its_example_is_done_from_its_page_without_script(string verb)
    {
        var step = StepTable.Find(verb)!;
        (string, string)[] example = [.. step.Example.GroupBy(one => one.Name).Select(same => (same.Key, string.Join("; ", same.Select(one => one.Value))))];
        var sent = await shop.Fill(Address(step), [.. example, ("do", step.Looks ? "show" : "record")]);
        Assert.True(sent.Status == (step.Looks ? 200 : 303), $"{sent.Status}: {sent.Seen}");
        var told = step.Looks ? sent : await shop.Get(sent.Location!);
        Assert.DoesNotContain("role=\"alert\"", told.Text, StringComparison.Ordinal);
        Assert.Contains("class=\"live\"", told.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("jarlabel ", told.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain(shop.Bench().Folder.Path, told.Seen, StringComparison.Ordinal); // of no use on the telephone in the hand
    }

    [Fact]
    public async Task A_picture_made_of_letters_stands_in_letters_of_one_width()
    {
        Assert.Matches("<pre class=\"drawn\">[+]-+[+]\n[|][^<]*[|]\n[^<]*[+]-+[+]</pre>", WebUtility.HtmlDecode((await shop.Fill("/sheets", ("id", "letter-2x5-101.6x50.8"), ("do", "show"))).Text));
        Assert.Matches("<pre class=\"drawn\">\\[ +[x1]\\]", (await shop.Get("/sheet/state")).Text);
    }

    [Theory, MemberData(nameof(NeedingVerbs))]
    public async Task What_is_needed_and_empty_is_asked_for_beside_its_field(string verb)
    {
        var step = StepTable.Find(verb)!;
        var told = await shop.Fill(Address(step), ("do", step.Looks ? "show" : "record"));
        Assert.Equal(step.Looks ? 200 : 422, told.Status);
        Assert.All(Needed(step), field => Assert.Contains($"{field.Label} is needed", told.Seen, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Verbs))]
    public async Task A_fault_in_any_field_is_told_in_the_words_of_the_page(string verb)
    {
        var step = StepTable.Find(verb)!;
        foreach (var field in step.Fields.Where(field => field is { IsSubject: false, IsTypedOnly: false, IsFlag: false }))
        {
            (string, string)[] example = [.. step.Example.Where(one => one.Name != field.Name).GroupBy(one => one.Name).Select(same => (same.Key, string.Join("; ", same.Select(one => one.Value))))];
            var told = await shop.Fill(Address(step), [.. example, (field.Name, "\u2603 none"), ("do", step.Looks ? "show" : "record")]);
            Assert.True(told.Status != 303 || OfLabel.Contains(field.Name), $"{verb} took {field.Name} as it was.");
            Assert.True(!told.Seen.Contains("--", StringComparison.Ordinal) && !told.Seen.Contains("jarlabel ", StringComparison.Ordinal), $"{verb}, {field.Name}: {told.Seen}");
        }
    }

    [Fact]
    public async Task What_helps_is_named_as_the_page_names_it()
    {
        var told = await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "ethanol-95"), ("do", "record"));
        Assert.Contains("The cut is missing. Give “Cut” with one of “Alcohol to pour”, “Flakes to use”", told.Seen, StringComparison.Ordinal);
        Assert.Contains("There is no bag 7-", (await shop.Fill("/mix", ("cut", "1"), ("pour", "1 L"), ("bag", "7"), ("solvent", "ethanol-95"), ("do", "record"))).Seen, StringComparison.Ordinal);
        Assert.Contains("“Bags” shows them, and “New bag of flakes” adds one.", (await shop.Fill("/mix", ("cut", "1"), ("pour", "1 L"), ("bag", "7"), ("solvent", "ethanol-95"), ("do", "record"))).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_helps_and_what_comes_next_are_buttons_that_open_a_filled_form()
    {
        var told = await shop.Fill("/mix", ("cut", "1"), ("pour", "1 L"), ("bag", "7"), ("solvent", "ethanol-95"), ("do", "record"));
        Assert.Contains("<a class=\"go\" href=\"/bag/add\">New bag of flakes</a>", told.Text, StringComparison.Ordinal);
        var sent = await shop.Fill("/bag/test", ("bag", "1"), ("pinch", "gel"), ("do", "record"));
        var done = await shop.Get(sent.Location!);
        Assert.Contains("<a class=\"go\" href=\"/bag/discard?bag=1&amp;why=a%20pinch%20swelled%20to%20a%20gel\">", done.Text, StringComparison.Ordinal);
        var form = await shop.Get("/bag/discard?bag=1&why=a%20pinch%20swelled%20to%20a%20gel&other=%3Cb%3E");
        Assert.Matches("name=\"why\"[^>]* value=\"a pinch swelled to a gel\"", form.Text);
        Assert.DoesNotContain("<b>", form.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_is_opened_filled_in_shows_at_once_what_it_comes_to()
    {
        var events = shop.Jar(1).Steps;
        var form = await shop.Get("/J/1/thin?to=1");
        Assert.Contains("holds then", form.Seen, StringComparison.Ordinal);
        Assert.Equal(events, shop.Jar(1).Steps);
        var wrong = await shop.Get("/J/1/thin?to=lots");
        Assert.DoesNotContain("role=\"alert\"", wrong.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"lots\"", wrong.Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Verbs))]
    public async Task Every_way_on_from_its_result_opens(string verb)
    {
        var step = StepTable.Find(verb)!;
        (string, string)[] example = [.. step.Example.GroupBy(one => one.Name).Select(same => (same.Key, string.Join("; ", same.Select(one => one.Value))))];
        var sent = await shop.Fill(Address(step), [.. example, ("do", step.Looks ? "show" : "record")]);
        var told = step.Looks ? sent : await shop.Get(sent.Location!);
        foreach (var way in Regex.Matches(told.Text, "<a class=\"go\" href=\"(/[^\"]*)\"").Select(found => WebUtility.HtmlDecode(found.Groups[1].Value)))
        {
            Assert.Equal((200, way), ((await shop.Get(way)).Status, way));
        }
    }

    [Fact]
    public async Task What_was_poured_off_is_told_with_the_way_to_each_label()
    {
        var done = await shop.Get((await shop.Fill("/J/1-9/decant", ("into", "100 mL, 50 mL"), ("do", "record"))).Location!);
        Assert.Contains("100 mL", done.Seen, StringComparison.Ordinal);
        Assert.Contains("href=\"/J/3-5/label.pdf\"", done.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/J/4-3/label.pdf\"", done.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_steps_are_listed()
    {
        var page = await shop.Get("/steps");
        Assert.All(StepTable.All.Where(step => step is { IsTypedOnly: false, IsOfJar: false, OnPages: null }), step => Assert.Contains($"href=\"{Address(step)}\"", page.Text, StringComparison.Ordinal));
    }

    /// <summary>What a step wrote can be fetched to print, and nothing else of the machine.</summary>
    [Fact]
    public async Task A_notice_is_written_and_fetched()
    {
        var done = await shop.Get((await shop.Fill("/notice", ("do", "record"))).Location!);
        var file = Regex.Match(done.Text, "href=\"(/labels/[^\"]+)\"").Groups[1].Value;
        var fetched = await shop.Get(file);
        Assert.Equal((200, "application/pdf"), (fetched.Status, fetched.Headers["Content-Type"]));
        Assert.StartsWith("%PDF-", fetched.Text, StringComparison.Ordinal);
        foreach (var foreign in (string[])["/labels/..%2Fledger.db", "/labels/ledger.db", "/labels/nothing.pdf", "/labels/%2e%2e%2fshop.json"])
        {
            Assert.Equal(404, (await shop.Get(foreign)).Status);
        }
    }

    /// <summary>Which label, which a step looks up only where it comes to write one.</summary>
    private static readonly string[] OfLabel = ["design", "sheet", "printer", "print-to"];

    private static IEnumerable<Field> Needed(Step step) => step.Fields.Where(field => field.IsNeeded && !field.IsSubject);

    private static string Address(Step step) => step.IsOfJar ? $"/J/1-9/{step.Verb}" : $"/{step.Verb.Replace(' ', '/')}";
}
