global using JarLabel.Layout.Marks;
global using JarLabel.Render;
global using SkiaSharp;
