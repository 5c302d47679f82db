namespace JarLabel.Operations.Typing;

/// <summary>Reads the name of a file.</summary>
internal static class FileText
{
    /// <summary>Its full path; a problem where nothing is named, or where there is no folder any more that it could be in.</summary>
    internal static Result<string> Read(string text, string where)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return TypingProblems.NotAFile(where);
        }

        try
        {
            return Path.GetFullPath(text);
        }
        catch (IOException)
        {
            return TypingProblems.NoCurrentFolder(text);
        }
    }
}
