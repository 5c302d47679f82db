namespace JarLabel.Operations.Recording;

/// <summary>The files of a step. On a dry run the guard looks at each place as it would, and nothing is written.</summary>
internal static class StepFiles
{
    /// <summary>Stages a file; null on a dry run.</summary>
    /// <param name="step">The step.</param>
    /// <param name="bench">The shop.</param>
    /// <param name="path">The place.</param>
    /// <param name="bytes">Its contents.</param>
    internal static StagedFile? Write(this LedgerStep step, Workbench bench, string path, byte[] bytes)
    {
        if (!bench.DryRun)
        {
            return step.Stage(path, bytes, bench.Force);
        }

        step.Rehearse(path, bytes, bench.Force);
        return null;
    }
}
