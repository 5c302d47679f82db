using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

[Cites(References.Clp, "Annex I tables 3.2.3 and 3.3.3, 3.8.3.4.5, 1.1.3: sum of shares over limits")]
[Cites(References.Osha1200, "Appendix A.2, A.3, A.8")]
public class IrritationRuleTests
{
    [Theory]
    [InlineData("propan-2-ol=9.99999999999999,water=90.00000000000001", "")]
    [InlineData("propan-2-ol=10,water=90", "H319")]
    [InlineData("propan-2-ol=5,butanone=5,water=90", "H319")]
    [InlineData("propan-2-ol=5,butanone=4.99999999999999,water=90.00000000000001", "")]
    [InlineData("ethanol=49.99999999999999,water=50.00000000000001", "")]
    [InlineData("ethanol=50,water=50", "H319")]
    [InlineData("ethanol=40,propan-2-ol=2,water=58", "H319")]
    [InlineData("ethanol=40,propan-2-ol=1.99999999999999,water=58.00000000000001", "")]
    [InlineData("1-butanol=1,water=99", "H319")]
    [InlineData("1-butanol=2.99999999999999,water=97.00000000000001", "H319")]
    [InlineData("1-butanol=3,water=97", "H318")]
    public void Eyes(string contents, string statement) =>
        Assert.Equal(statement, string.Join(' ', Assess(contents, RuleSet.Clp).Statements.Where(s => s is "H318" or "H319")));

    [Theory]
    [InlineData("propan-2-ol=19.99999999999999,water=80.00000000000001", "")]
    [InlineData("propan-2-ol=20,water=80", "H336")]
    [InlineData("propan-2-ol=10,1-butanol=10,water=80", "H315 H336")]
    [InlineData("1-butanol=20,water=80", "H315 H335 H336")]
    [InlineData("1-butanol=9.99999999999999,water=90.00000000000001", "")]
    public void Skin_airways_and_drowsiness(string contents, string statements) =>
        Assert.Equal(statements, string.Join(' ', Assess(contents, RuleSet.Osha).Statements.Where(s => s is "H315" or "H335" or "H336")));

    [Theory]
    [InlineData(true, "H225 H319")]
    [InlineData(false, "H225")]
    public void The_eye_class_that_suppliers_give_ethanol_is_a_setting(bool counted, string statements)
    {
        var found = MixtureClassifier.Classify(Of("ethanol=95,water=5"), RuleSet.Clp, Ours, new HazardSettings(counted));
        Assert.Equal(statements, string.Join(' ', found.Statements));
    }
}
