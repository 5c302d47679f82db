namespace JarLabel.Core;

/// <summary>Something the user or a file must mend: a stable code, a sentence that says what was read, what is allowed
/// and an example, and where it was read (an option such as <c>--cut</c>, or <c>file#/path/in/it</c>).</summary>
/// <param name="Code"><c>JL1xx</c> input, <c>JL2xx</c> catalog, <c>JL3xx</c> layout and preflight, <c>JL4xx</c> ledger,
/// <c>JL5xx</c> printing, <c>JL6xx</c> web.</param>
/// <param name="Message">The whole sentence shown to a person.</param>
/// <param name="Where">The place of the fault, when there is one.</param>
public sealed record Problem(string Code, string Message, string? Where = null);
