package walebook.record;

import java.util.UUID;

/**
 * A lesson pack as it was when a class took it up.
 *
 * @param name the pack's folder name
 * @param version as its author numbers it
 * @param contentHash SHA-256 over its files, 64 hexadecimal digits
 */
public record TaughtPack(
    UUID id,
    String name,
    String version,
    String title,
    String contentHash,
    String packYaml,
    String lessonMd,
    Stamp stamp) {
  public TaughtPack {
    Check.text("name", name);
    Check.text("title", title);
    if (contentHash.length() != 64) {
      throw new IllegalArgumentException("contentHash must have 64 digits: " + contentHash);
    }
  }
}
