namespace JarLabel.Tests.Operations;

public class MessageTests
{
    private static readonly Message Told = Message.Of($"Read {3.5:0.0} g. Weigh again for {new InputName("left", "6 g")}, or {new Remedy("use", new("jar", "1-9"), new("volume", "all"))}.");

    [Fact]
    public void Each_surface_writes_the_names_its_own_way() =>
        Assert.Equal("Read 3.5 g. Weigh again for [left=6 g], or <use 1-9 all>.", Told.In(new Brackets()));

    [Fact]
    public void Without_a_surface_names_stand_bare() => Assert.Equal("Read 3.5 g. Weigh again for left 6 g, or use 1-9 all.", Told.ToString());

    [Fact]
    public void Messages_that_read_the_same_are_equal()
    {
        Assert.Equal(Told, (Message)Told.ToString());
        Assert.NotEqual(Told, (Message)"Read 4 g.");
        Assert.Single(new[] { new Problem("JL101", Told, "left"), new Problem("JL101", Told.ToString(), "left") }.Distinct());
    }

    [Fact]
    public void What_helps_can_be_offered() => Assert.Equal("use", Assert.Single(Told.Remedies).Verb);

    [Fact]
    public void A_sentence_within_a_sentence_keeps_its_names_open()
    {
        var outer = Message.Of($"Jar {1}: {Told} {(Message)"That is all."}");
        Assert.Equal("Jar 1: Read 3.5 g. Weigh again for [left=6 g], or <use 1-9 all>. That is all.", outer.In(new Brackets()));
        Assert.Equal("use", Assert.Single(outer.Remedies).Verb);
    }

    private sealed class Brackets : ISpelling
    {
        public string Write(InputName input) => $"[{input.Name}={input.Value}]";

        public string Write(Remedy remedy) => $"<{remedy.Verb} {string.Join(' ', remedy.Values.Select(value => value.Value))}>";
    }
}
