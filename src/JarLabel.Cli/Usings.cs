global using JarLabel.Bench.Answers;
global using JarLabel.Cli.Answers;
