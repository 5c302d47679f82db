global using System.Buffers.Binary;
global using System.Globalization;
global using System.Net;
global using System.Text;
global using JarLabel.Core;
global using JarLabel.Printing.Ipp;
