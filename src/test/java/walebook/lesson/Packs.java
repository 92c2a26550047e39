package walebook.lesson;

import java.util.List;

/** The built-in packs by name, read once for the tests. */
public final class Packs {
  private static final List<LessonPack> ALL =
      BuiltInPacks.all().stream().map(each -> new ReadPack().read(each).value()).toList();

  private Packs() {}

  static List<LessonPack> all() {
    return ALL;
  }

  public static LessonPack named(String name) {
    return ALL.stream()
        .filter(each -> each.about().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pack " + name));
  }

  /** The pack whose plan sews three widths in two lengths on two cloths. */
  public static LessonPack seam() {
    return named("seam-that-stretches");
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
