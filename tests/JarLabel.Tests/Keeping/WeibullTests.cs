namespace JarLabel.Tests.Keeping;

/// <summary>The distribution against a reference library, and its fit against the handbook's example.</summary>
public class WeibullTests
{
    private static readonly double[] Failures = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];

    [Fact, Cites(References.NistStatistics, "8.4.1.3: shape 1.7208, scale 606.5280")]
    public void Ten_failures_and_ten_units_stopped_at_five_hundred_hours_fit_as_in_the_handbook()
    {
        LifeObservation[] lives = [.. Failures.Select(t => new LifeObservation(t, t)), .. Enumerable.Repeat(new LifeObservation(500, null), 10)];
        var fit = WeibullFit.Of(lives)!.Value;
        Assert.Equal(1.7208, fit.Shape, 4e-4);
        Assert.Equal(606.5280, fit.Scale, 0.02);
    }

    [Fact]
    public void Where_no_two_lives_ended_there_is_no_fit()
    {
        Assert.Null(WeibullFit.Of([]));
        Assert.Null(WeibullFit.Of([new(10, 20), new(30, null)]));
        Assert.Null(WeibullFit.Of([new(10, 20), new(10, 20)]));
    }

    /// <summary>The library gives its shares to about eight figures.</summary>
    [Theory]
    [InlineData(0.7, 30)]
    [InlineData(1.7208, 606.528)]
    [InlineData(3, 243)]
    [InlineData(8, 12)]
    public void Shares_and_ages_are_those_of_the_reference_library(double shape, double scale)
    {
        var reference = new MathNet.Numerics.Distributions.Weibull(shape, scale);
        var ours = new Weibull(shape, scale);
        foreach (var part in (double[])[0.01, 0.2, 0.7, 1, 1.4, 2])
        {
            var age = part * scale;
            Assert.Equal(1 - reference.CumulativeDistribution(age), ours.StillGood(age), 1e-8);
            Assert.Equal(reference.DensityLn(age), ours.LogLikelihood(new(age, age)), 1e-9);
            Assert.Equal(reference.CumulativeDistribution(1.1 * age) - reference.CumulativeDistribution(age), Math.Exp(ours.LogLikelihood(new(age, 1.1 * age))), 1e-8);
            Assert.Equal(1 - reference.CumulativeDistribution(age), Math.Exp(ours.LogLikelihood(new(age, null))), 1e-8);
        }

        foreach (var share in (double[])[0.99, 0.9, 0.5, 0.05])
        {
            Assert.Equal(share, 1 - reference.CumulativeDistribution(ours.AgeWhen(share)), 1e-8);
            Assert.Equal(scale, Weibull.Through(shape, ours.AgeWhen(share), share).Scale, 1e-9 * scale);
        }
    }

    [Fact]
    public void A_thousand_lives_seen_only_at_monthly_tests_fit_near_the_distribution_they_come_from()
    {
        var random = new Random(20260309);
        var reference = new MathNet.Numerics.Distributions.Weibull(3, 250, random);
        LifeObservation[] lives = [.. Enumerable.Range(0, 1000).Select(_ => Math.Floor(reference.Sample() / 30)).Select(month => new LifeObservation(30 * month, 30 * (month + 1)))];
        var fit = WeibullFit.Of(lives)!.Value;
        Assert.InRange(fit.Shape, 2.8, 3.2);
        Assert.InRange(fit.Scale, 240, 260);
    }
}
