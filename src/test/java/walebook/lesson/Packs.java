package walebook.lesson;

import java.util.List;

/** The built-in packs by name, read once for the tests. */
final class Packs {
  private static final List<LessonPack> ALL =
      BuiltInPacks.all().stream().map(each -> new ReadPack().read(each).value()).toList();

  private Packs() {}

  static List<LessonPack> all() {
    return ALL;
  }

  static LessonPack named(String name) {
    return ALL.stream()
        .filter(each -> each.about().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pack " + name));
  }

  static PackSource source(String name) {
    return BuiltInPacks.all().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pack " + name));
  }

  /** The lesson's text as written, with line ends and spaces made one. */
  static String words(LessonPack pack) {
    return pack.files().lessonMd().replaceAll("\\s+", " ");
  }
}
