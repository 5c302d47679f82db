namespace JarLabel.Tests.Planning;

public class SprayLossTests
{
    // Of what is sprayed 35 to 75 % is lost (Dresdner, as quoted): 1.5 to 4 times what comes onto the wood; the default at least doubles it.
    [Fact, CommonPractice]
    public void Spraying_takes_at_least_twice_what_comes_onto_the_wood()
    {
        Assert.InRange(1 + JobKind.ByWord["spray"].UsualWaste, 2, 1 / (1 - 0.75));
        Assert.All(JobKind.ByWord.Values.Where(kind => kind.Word != "spray"), kind => Assert.InRange(kind.UsualWaste, 0, 0.35));
    }
}
