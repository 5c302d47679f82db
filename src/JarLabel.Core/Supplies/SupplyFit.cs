namespace JarLabel.Core.Supplies;

/// <summary>Whether the bag and the bottle hold what a step needs, and what could be made of them instead.</summary>
public static class SupplyFit
{
    /// <summary>The recipe, or what is short, with the largest batch of the same cut that both give.</summary>
    public static Result<Recipe> Check(Recipe recipe, Bag? bag, Bottle? bottle)
    {
        var possible = Largest(recipe, bag, bottle);
        Problem[] problems =
        [
            .. bag is not null && recipe.Flakes > bag.Left * SupplyReading.Most ? [SupplyProblems.BagTooSmall(bag, recipe.Flakes, possible)] : Array.Empty<Problem>(),
            .. bottle is not null && recipe.Pour > bottle.Left * SupplyReading.Most ? [SupplyProblems.BottleTooSmall(bottle, recipe.Pour, possible)] : Array.Empty<Problem>(),
        ];
        return problems.Length == 0 ? recipe : Result<Recipe>.Failed(problems);
    }

    /// <summary>The thinning, or how far the bottle's rest would thin the jar.</summary>
    public static Result<Thinning> Check(Thinning thinning, Contents jar, Bottle bottle)
    {
        return thinning.Add <= bottle.Left * SupplyReading.Most ? thinning : SupplyProblems.TooLittleToThin(bottle, thinning.Add, PoundCut.Of(jar.Flakes, jar.Poured + bottle.Left));
    }

    /// <summary>The thickening, or how far the bag's rest would thicken the jar.</summary>
    public static Result<Thickening> Check(Thickening thickening, Contents jar, Bag bag)
    {
        return thickening.Add <= bag.Left * SupplyReading.Most ? thickening : SupplyProblems.TooLittleToThicken(bag, thickening.Add, PoundCut.Of(jar.Flakes + bag.Left, jar.Poured));
    }

    /// <summary>The reading of a scale or a measure, unless it is more than there ever was.</summary>
    public static Result<SupplyEvent> Check(SupplyEvent reading, Supply supply) => supply.TakenBack || supply.Discarded ? SupplyProblems.Gone(supply, supply.Kind.Word())
        : reading is IReading { Size: var read } && read > supply.Full * SupplyReading.Most ? SupplyProblems.MoreThanBought(supply, read)
        : reading;

    /// <summary>The bag or bottle when there is still something in it; else a problem.</summary>
    /// <param name="supply">It.</param>
    /// <param name="where">Where it was typed.</param>
    public static Result<T> DemandOnHand<T>(this T supply, string where)
        where T : Supply => supply.OnHand ? supply : SupplyProblems.Gone(supply, where);

    /// <summary>That it was measured since, so that what was taken before, or was not, changes nothing of what it holds.</summary>
    public static Problem Measured(Supply supply) => SupplyProblems.MeasuredSince(supply, supply.Measured!.Value);

    /// <summary>The bag or bottle as it was at a moment, for a step that is entered late.</summary>
    public static Result<T> AsAt<T>(this T supply, DateTime at)
        where T : Supply
    {
        supply.LookAt(at);
        return supply;
    }

    /// <summary>The bag or bottle when something can be mixed from it; else a problem.</summary>
    public static Result<T> DemandFit<T>(this T supply)
        where T : Supply => supply is Bag { Unfit: true } bag ? SupplyProblems.Unfit(bag) : supply;

    /// <summary>The bag, unless its flakes are of a later day than the step.</summary>
    public static Result<Bag> Made(Bag bag, DateOnly day) => bag.Made <= day ? bag : SupplyProblems.NotYetMade(bag, day);

    /// <summary>The bag, unless its flakes were said to be of another day than its own.</summary>
    public static Result<Bag> Dated(Bag bag, DateOnly said) => bag.Made == said ? bag : SupplyProblems.OtherDate(bag, said);

    /// <summary>That a bottle came only after the step, or nothing. It changes no figure, so it is said and not refused.</summary>
    public static IReadOnlyList<Problem> Bought(Supply supply, DateOnly day) => supply is Bottle bottle && bottle.Since > day ? [SupplyProblems.NotYetBought(bottle, day)] : [];

    /// <summary>The bag or bottle when it holds that grade or solvent; else a problem.</summary>
    public static Result<T> Demand<T>(T supply, string id, ShopCatalog catalog)
        where T : Supply
    {
        return supply.Holds == id ? supply : SupplyProblems.OtherThing(supply, Name(supply.Holds), Name(id));

        string Name(string of) => supply.Kind == SupplyKind.Bag ? catalog.GradeOf(of).Name : catalog.SolventOf(of).Name;
    }

    private static Recipe Largest(Recipe recipe, Bag? bag, Bottle? bottle)
    {
        var byFlakes = bag is null ? recipe.Pour : recipe.Cut.PourFor(bag.Left);
        var byAlcohol = bottle is null ? recipe.Pour : bottle.Left;
        var pour = Volume.FromMilliliters(Math.Min(recipe.Pour.Milliliters, Math.Min(byFlakes.Milliliters, byAlcohol.Milliliters)));
        return recipe with { Pour = pour, Flakes = recipe.Cut.FlakesFor(pour) };
    }
}

/// <summary>How far a bench may read a bag's or bottle's last bit off: half a percent, as for a jar.</summary>
internal static class SupplyReading
{
    /// <summary>The most that may be asked for of what is left.</summary>
    internal const double Most = 1.005;

    /// <summary>From this part of what is left on it is all.</summary>
    internal const double Least = 0.995;
}
