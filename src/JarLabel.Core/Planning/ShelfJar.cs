using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Planning;

/// <summary>A jar that might serve a job.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Cut">Its cut.</param>
/// <param name="Liquid">What is in it.</param>
/// <param name="UseBy">Its estimated use-by.</param>
/// <param name="TestFirst">True when a few drops on glass come first.</param>
/// <param name="Ready">From when its flakes are dissolved.</param>
public sealed record ShelfJar(JarNumber Number, PoundCut Cut, Volume Liquid, DateOnly UseBy, bool TestFirst, DateTime Ready);
