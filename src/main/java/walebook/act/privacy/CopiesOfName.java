package walebook.act.privacy;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import walebook.book.BookCopy;
import walebook.book.sqlite.Backups;

/**
 * Finds a name in the copies that were made of a book, byte by byte. Only the book's own folder of
 * copies is looked through: copies on sticks, in other folders or with other people are not known.
 */
public final class CopiesOfName {
  private static final int STEP = 1 << 16;

  private CopiesOfName() {}

  /** The copies that hold the name, newest first. Takes its time. */
  public static List<Path> in(Path book, String name) throws IOException {
    List<Path> found = new ArrayList<>();
    for (BookCopy each : Backups.list(book)) {
      if (holds(each.file(), name)) {
        found.add(each.file());
      }
    }
    return found;
  }

  /** Whether a file has the name in its bytes, composed or decomposed. */
  static boolean holds(Path file, String name) throws IOException {
    List<byte[]> forms =
        Stream.of(Normalizer.Form.NFC, Normalizer.Form.NFD)
            .map(form -> Normalizer.normalize(name, form))
            .distinct()
            .map(each -> each.getBytes(StandardCharsets.UTF_8))
            .toList();
    int longest = forms.stream().mapToInt(each -> each.length).max().orElse(0);
    byte[] kept = new byte[0];
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), STEP)) {
      for (byte[] more = in.readNBytes(STEP); more.length > 0; more = in.readNBytes(STEP)) {
        byte[] all = java.util.Arrays.copyOf(kept, kept.length + more.length);
        System.arraycopy(more, 0, all, kept.length, more.length);
        if (forms.stream().anyMatch(each -> contains(all, each))) {
          return true;
        }
        int keep = Math.min(all.length, Math.max(0, longest - 1));
        kept = java.util.Arrays.copyOfRange(all, all.length - keep, all.length);
      }
    }
    return false;
  }

  private static boolean contains(byte[] all, byte[] wanted) {
    for (int i = 0; i + wanted.length <= all.length; i++) {
      if (java.util.Arrays.equals(all, i, i + wanted.length, wanted, 0, wanted.length)) {
        return true;
      }
    }
    return false;
  }

  /** Deletes copies for good. */
  public static void delete(List<Path> copies) throws IOException {
    for (Path each : copies) {
      Files.deleteIfExists(each);
    }
  }
}
