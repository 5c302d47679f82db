namespace JarLabel.Tests.Labels;

public class ArticleWordsTests
{
    [Theory]
    [InlineData("8", "an 8")]
    [InlineData("8.5", "an 8.5")]
    [InlineData("80", "an 80")]
    [InlineData("11", "an 11")]
    [InlineData("11.25", "an 11.25")]
    [InlineData("18", "an 18")]
    [InlineData("1.8", "a 1.8")]
    [InlineData("1", "a 1")]
    [InlineData("2", "a 2")]
    [InlineData("110", "a 110")]
    public void The_article_goes_with_the_figure_as_it_is_spoken(string figure, string says) => Assert.Equal(says, ArticleWords.A(figure));
}
