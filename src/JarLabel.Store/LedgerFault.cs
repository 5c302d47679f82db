namespace JarLabel.Store;

/// <summary>Carries a problem from deep inside a transaction to the ledger's door, which drops the transaction and hands the problem
/// to the caller. Never leaves this project.</summary>
internal sealed class LedgerFault(Problem problem) : Exception(problem.Message)
{
    internal Problem Problem { get; } = problem;
}
