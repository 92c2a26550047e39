package walebook.lesson;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Reads a lesson pack and checks all of it; one for many packs, since the schema takes a moment.
 */
public final class ReadPack {
  static final String YAML = "pack.yaml";
  static final String TEXT = "lesson.md";

  private final PackSchema schema = PackSchema.load();
  private final CheckShape shape = new CheckShape(schema);
  private final List<String> faults = schema.faults();

  /**
   * The pack, or everything that is wrong with it at once: file, line, column, field, what was
   * found and what is wanted. Files that don't belong to a pack are remarked on and left out.
   */
  public Answer<LessonPack> read(PackSource source) {
    List<Problem> problems = new ArrayList<>();
    SortedMap<String, byte[]> files = files(source, problems);
    if (files == null) {
      return Answer.bad(problems);
    }
    String yaml = text(source, files, YAML, problems);
    String markdown = text(source, files, TEXT, problems);
    ReadText.Result text = markdown == null ? null : textOf(source, markdown, problems);
    YamlDoc doc = yaml == null ? null : tree(source, yaml, problems);
    SortedMap<String, byte[]> pictures = new TreeMap<>(files);
    pictures.keySet().removeIf(file -> !CheckPictures.isPicture(file));
    LessonText words = text == null ? new LessonText("", List.of(), List.of()) : text.text();
    problems.addAll(CheckPictures.check(source.name(), path(source, TEXT), words, pictures));
    if (doc != null) {
      problems.addAll(shape.check(doc));
      problems.addAll(CheckPlan.check(doc));
      problems.addAll(CheckLesson.check(doc, source.name(), path(source, TEXT), words, faults));
    }
    if (yaml == null || markdown == null || doc == null || refuses(problems)) {
      return Answer.bad(inOrder(problems));
    }
    PackFiles kept = new PackFiles(PackHash.of(files), yaml, markdown, pictures(pictures));
    return new Answer.Good<>(ShapePack.of(doc.root(), words, kept), problems);
  }

  private static @Nullable SortedMap<String, byte[]> files(
      PackSource source, List<Problem> problems) {
    Place folder = new Place.Path(source.name());
    SortedMap<String, byte[]> files = new TreeMap<>();
    try {
      SortedMap<String, Long> sizes = source.files();
      if (sizes.size() > PackLimits.FILES) {
        String most = String.valueOf(PackLimits.FILES);
        problems.add(Problem.refuse("pack.too-many-files", folder, "", most));
        return null;
      }
      long all = 0;
      for (Map.Entry<String, Long> each : sizes.entrySet()) {
        String file = each.getKey();
        if (file.equals(YAML) || file.equals(TEXT) || CheckPictures.isPicture(file)) {
          byte[] content = source.read(file, PackLimits.PICTURE_BYTES);
          all += content.length;
          files.put(file, content);
        } else {
          Place place = new Place.Path(path(source, file));
          problems.add(Problem.ask("pack.file-unknown", place, file, ""));
        }
        if (all > PackLimits.ALL_BYTES) {
          String most = PackLimits.ALL_BYTES / (1024 * 1024) + " MB";
          problems.add(Problem.refuse("pack.too-big", folder, "", most));
          return null;
        }
      }
      return files;
    } catch (NotDirectoryException | NoSuchFileException e) {
      problems.add(Problem.refuse("pack.no-folder", folder, source.name(), ""));
    } catch (IOException e) {
      problems.add(Problem.refuse("pack.unreadable", folder, String.valueOf(e.getMessage()), ""));
    }
    return null;
  }

  private static @Nullable String text(
      PackSource source, SortedMap<String, byte[]> files, String file, List<Problem> problems) {
    byte[] bytes = files.get(file);
    if (bytes == null) {
      Place place = new Place.Path(path(source, file));
      problems.add(Problem.refuse("pack.file-missing", place, "", file));
      return null;
    }
    Answer<String> text = PlainText.of(path(source, file), bytes, PackLimits.TEXT_BYTES);
    problems.addAll(text.problems());
    return text.isGood() ? text.value() : null;
  }

  private static ReadText.Result textOf(
      PackSource source, String markdown, List<Problem> problems) {
    ReadText.Result read = new ReadText(path(source, TEXT)).read(markdown);
    problems.addAll(read.problems());
    return read;
  }

  private static @Nullable YamlDoc tree(PackSource source, String yaml, List<Problem> problems) {
    Answer<YamlDoc> doc = ReadYaml.read(path(source, YAML), yaml);
    problems.addAll(doc.problems());
    if (!doc.isGood()) {
      return null;
    }
    problems.addAll(doc.value().slips());
    return doc.value();
  }

  private static List<PackPicture> pictures(SortedMap<String, byte[]> pictures) {
    return pictures.entrySet().stream()
        .map(each -> new PackPicture(each.getKey(), each.getValue()))
        .toList();
  }

  private static boolean refuses(List<Problem> problems) {
    return problems.stream().anyMatch(Problem::refuses);
  }

  /** As one reads: by file, then down the lines. */
  private static List<Problem> inOrder(List<Problem> problems) {
    return problems.stream()
        .distinct()
        .sorted(
            Comparator.comparing((Problem each) -> spot(each).file())
                .thenComparing(each -> spot(each).line())
                .thenComparing(each -> spot(each).column()))
        .limit(PackLimits.PROBLEMS)
        .toList();
  }

  private static Place.Spot spot(Problem problem) {
    if (problem.place() instanceof Place.Spot spot) {
      return spot;
    }
    String file = problem.place() instanceof Place.Path path ? path.path() : "";
    return new Place.Spot(file, 0, 0, "");
  }

  private static String path(PackSource source, String file) {
    return source.name() + "/" + file;
  }
}
