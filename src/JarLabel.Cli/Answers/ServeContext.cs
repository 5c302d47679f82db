using System.Text.Json.Serialization;

namespace JarLabel.Cli.Answers;

/// <summary>The compiled shapes of what only <c>serve</c> and <c>publish</c> print.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(HelpAnswerJson))]
[JsonSerializable(typeof(ServeAnswerJson))]
[JsonSerializable(typeof(PublishAnswerJson))]
[JsonSerializable(typeof(DevicesAnswerJson))]
internal sealed partial class ServeContext : JsonSerializerContext;
