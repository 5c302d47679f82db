using System.CommandLine;
using JarLabel.Cli.Calc;
using JarLabel.Cli.Commands;

namespace JarLabel.Cli;

/// <summary>Every command there is.</summary>
internal static class CommandTree
{
    internal static RootCommand Create(Runner runner)
    {
        var root = new RootCommand("Mix shellac from flakes and alcohol, keep the ledger of every jar, print its label.")
        {
            MixCommand.Create(runner),
            ThinCommand.Create(runner),
            ThickenCommand.Create(runner),
            BlendCommand.Create(runner),
            DecantCommand.Create(runner),
            UseCommand.Create(runner),
            TestCommand.Create(runner),
            MoveCommand.Create(runner),
            NoteCommand.Create(runner),
            DiscardCommand.Create(runner),
            UndoCommand.Create(runner),
            JarCommand.Create(runner),
            ScanCommand.Create(runner),
            ShelfCommand.Create(runner),
            BagCommand.Create(runner),
            BottleCommand.Create(runner),
            KeepingCommand.Create(runner),
            PlanCommand.Create(runner),
            LabelCommand.Create(runner),
            CardCommand.Create(runner),
            NoticeCommand.Create(runner),
            SheetsCommand.Create(runner),
            SheetCommand.Create(runner),
            DesignsCommand.Create(runner),
            CalibrateCommand.Create(runner),
            PrintersCommand.Create(runner),
            CheckCommand.Create(runner),
            ServeCommand.Create(runner),
            PublishCommand.Create(runner),
            ShopCommand.Create(runner),
            ExportCommand.Create(runner),
            ImportCommand.Create(runner),
            BackupCommand.Create(runner),
            VerifyCommand.Create(runner),
            DemoCommand.Create(runner),
            new Command("calc", "Sums without a jar.")
            {
                CalcMixCommand.Create(runner),
                CalcThinCommand.Create(runner),
                CalcThickenCommand.Create(runner),
                CalcBlendCommand.Create(runner),
                CalcSolidsCommand.Create(runner),
                CalcDensityCommand.Create(runner),
                CalcHazardsCommand.Create(runner),
                CalcAirCommand.Create(runner),
                CalcPurgeCommand.Create(runner),
                CalcCoverageCommand.Create(runner),
            },
        };
        SharedOptions.AddTo(root);
        return root;
    }
}
