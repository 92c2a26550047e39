package walebook.lesson;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Takes a pack out of a zip, into memory alone: nothing is ever written where the zip says. What
 * would lead out of the pack's folder is refused by name, and what unpacks to too much is stopped
 * while it unpacks, whatever sizes the zip claims.
 */
public final class ReadZip {
  private static final Pattern OUTSIDE =
      Pattern.compile(
          "(?s)^/.*|.*\\\\.*|^[A-Za-z]:.*|(?:.*/)?[.][.]?(?:/.*)?|.*//.*|.*\\p{Cntrl}.*");

  private final Place zip;
  private final byte[] bytes;
  private final List<Problem> problems = new ArrayList<>();

  private ReadZip(String name, byte[] bytes) {
    this.zip = new Place.Path(name);
    this.bytes = bytes;
  }

  /** The pack in a zip file, ready to be read and checked, or what is wrong with the zip. */
  public static Answer<PackSource> of(Path file) {
    String name = String.valueOf(file.getFileName());
    Place place = new Place.Path(name);
    if (!Files.isRegularFile(file)) {
      return Answer.bad(Problem.refuse("pack.no-zip", place, name, ""));
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes((int) PackLimits.ZIP_BYTES + 1);
      return bytes.length > PackLimits.ZIP_BYTES
          ? Answer.bad(
              Problem.refuse("pack.too-big", place, "", PackLimits.megabytes(PackLimits.ZIP_BYTES)))
          : of(name, bytes);
    } catch (IOException e) {
      return Answer.bad(
          Problem.refuse("pack.unreadable", place, String.valueOf(e.getMessage()), ""));
    }
  }

  /**
   * The pack in a zip at hand.
   *
   * @param name of the zip's file; the pack's name where the zip holds its files without a folder
   */
  static Answer<PackSource> of(String name, byte[] bytes) {
    return new ReadZip(name, bytes).read(name);
  }

  private Answer<PackSource> read(String name) {
    List<ZipDirectory.Entry> entries = ZipDirectory.of(bytes, PackLimits.ZIP_ENTRIES);
    if (entries == null) {
      return Answer.bad(Problem.refuse("pack.not-a-zip", zip, "", ""));
    }
    if (entries.size() > PackLimits.ZIP_ENTRIES) {
      String most = String.valueOf(PackLimits.ZIP_ENTRIES);
      return Answer.bad(Problem.refuse("pack.too-many-files", zip, "", most));
    }
    check(entries);
    Set<String> folders = new TreeSet<>();
    entries.stream().filter(ReadZip::counts).forEach(each -> folders.add(folder(each.name())));
    if (problems.isEmpty() && folders.size() != 1) {
      String found =
          folders.stream()
              .map(each -> each.isEmpty() ? "." : each)
              .collect(Collectors.joining(", "));
      refuse(folders.isEmpty() ? "pack.zip-empty" : "pack.zip-folders", found);
    }
    if (!problems.isEmpty()) {
      return Answer.bad(problems);
    }
    String folder = folders.iterator().next();
    Map<String, byte[]> files = unpacked(entries, folder.isEmpty() ? 0 : folder.length() + 1);
    String ownName = name.replaceFirst("(?i)[.]zip$", "");
    return problems.isEmpty()
        ? Answer.good(new PackBytes(folder.isEmpty() ? ownName : folder, files))
        : Answer.bad(problems);
  }

  private void check(List<ZipDirectory.Entry> entries) {
    Set<String> seen = new HashSet<>();
    for (ZipDirectory.Entry each : entries) {
      if (OUTSIDE.matcher(each.name()).matches()) {
        refuse("pack.zip-outside", each.name());
      } else if (each.special()) {
        refuse("pack.zip-link", each.name());
      } else if (each.encrypted()) {
        refuse("pack.zip-encrypted", each.name());
      } else if (!seen.add(each.name().toLowerCase(Locale.ROOT))) {
        // Some systems don't tell capitals apart, so neither may a pack.
        refuse("pack.zip-twice", each.name());
      } else if (counts(each) && folder(each.name()).contains("/")) {
        refuse("pack.zip-nested", each.name());
      }
    }
  }

  /** What belongs to the pack; folders and what systems leave behind by themselves don't. */
  private static boolean counts(ZipDirectory.Entry entry) {
    String name = entry.name();
    String file = name.substring(name.lastIndexOf('/') + 1);
    return !entry.isFolder() && !file.startsWith(".") && !name.startsWith("__MACOSX/");
  }

  private static String folder(String name) {
    return name.contains("/") ? name.substring(0, name.lastIndexOf('/')) : "";
  }

  /**
   * Unpacks every entry, those that don't count too, since they cost as much.
   *
   * @param cut letters of the folder before each file's name
   */
  private Map<String, byte[]> unpacked(List<ZipDirectory.Entry> entries, int cut) {
    Map<String, ZipDirectory.Entry> known = new TreeMap<>();
    entries.forEach(each -> known.put(each.name(), each));
    Map<String, byte[]> files = new TreeMap<>();
    ByteArrayInputStream packed = new ByteArrayInputStream(bytes);
    long all = 0;
    int met = 0;
    try (ZipInputStream in = new ZipInputStream(packed, StandardCharsets.UTF_8)) {
      for (ZipEntry next = in.getNextEntry(); next != null; next = in.getNextEntry()) {
        ZipDirectory.Entry entry = known.remove(next.getName());
        if (entry == null) {
          refuse("pack.zip-broken", next.getName());
          return files;
        }
        met++;
        byte[] content = content(in, packed, entry, PackLimits.ALL_BYTES - all);
        if (!problems.isEmpty()) {
          return files;
        }
        all += content.length;
        if (counts(entry)) {
          files.put(entry.name().substring(cut), content);
        }
      }
    } catch (IOException | IllegalArgumentException e) { // also names that are no UTF-8
      refuse("pack.zip-broken", "");
    }
    if (problems.isEmpty() && met < entries.size()) {
      refuse("pack.zip-broken", known.keySet().stream().findFirst().orElse(""));
    }
    return files;
  }

  private byte[] content(
      ZipInputStream in, ByteArrayInputStream packed, ZipDirectory.Entry entry, long left)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] some = new byte[8192];
    long before = packed.available();
    for (int read = in.read(some); read >= 0; read = in.read(some)) {
      out.write(some, 0, read);
      long took = before - packed.available();
      boolean explodes =
          out.size() > PackLimits.ZIP_RATIO_FROM
              && out.size() > PackLimits.ZIP_RATIO * Math.max(took, 1);
      if (explodes) {
        refuse("pack.zip-explodes", entry.name());
      } else if (out.size() > Math.min(left, PackLimits.PICTURE_BYTES)) {
        String most =
            PackLimits.megabytes(
                out.size() > left ? PackLimits.ALL_BYTES : PackLimits.PICTURE_BYTES);
        problems.add(Problem.refuse("pack.zip-too-big", zip, shown(entry.name()), most));
      }
      if (!problems.isEmpty()) {
        break; // going on would unpack the rest
      }
    }
    return out.toByteArray();
  }

  private void refuse(String code, String entry) {
    if (problems.size() < PackLimits.PROBLEMS) {
      problems.add(Problem.refuse(code, zip, shown(entry), ""));
    }
  }

  private static String shown(String entry) {
    return ReadRuns.firstLine(entry.replaceAll("\\p{Cntrl}", "?"));
  }
}
