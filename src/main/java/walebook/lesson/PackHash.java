package walebook.lesson;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/**
 * A pack's version by content: SHA-256 (FIPS 180-4) over its files' names and contents, sorted by
 * name. Line endings of text don't count, since copying a folder between systems changes them.
 */
public final class PackHash {
  private PackHash() {}

  /**
   * The hash of a pack.
   *
   * @param files contents by file name
   * @return 64 hexadecimal digits
   */
  public static String of(SortedMap<String, byte[]> files) {
    MessageDigest digest = sha256();
    files.forEach(
        (name, content) -> {
          byte[] counted = isText(name) ? plainLines(content) : content;
          part(digest, name.getBytes(StandardCharsets.UTF_8));
          part(digest, counted);
        });
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void part(MessageDigest digest, byte[] bytes) {
    // The length first, so that no two folders run together to the same bytes.
    digest.update(ByteBuffer.allocate(Long.BYTES).putLong(bytes.length).array());
    digest.update(bytes);
  }

  private static boolean isText(String name) {
    return name.endsWith(".yaml") || name.endsWith(".md") || name.endsWith(".svg");
  }

  private static byte[] plainLines(byte[] content) {
    return new String(content, StandardCharsets.ISO_8859_1)
        .replace("\r\n", "\n")
        .replace('\r', '\n')
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
