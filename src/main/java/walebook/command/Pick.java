package walebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackFolder;
import walebook.lesson.PackSource;
import walebook.lesson.ReadPack;
import walebook.record.Cloth;
import walebook.record.GarmentSheet;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** Finds rows of the book by what was typed: a name, the beginning of one, or an alias. */
final class Pick {
  private Pick() {}

  /** The class of {@code --class}; the only one of the book when none is named. */
  static SchoolClass schoolClass(Typed typed, Book book) {
    List<SchoolClass> all = book.classes().all();
    String name = typed.text("class");
    if (name == null && all.size() == 1) {
      return all.get(0);
    }
    if (all.isEmpty()) {
      throw Refused.field("class", "class.none-yet", name == null ? "" : name.strip(), "");
    }
    return byName("class", name, all, each -> List.of(each.name()));
  }

  static @Nullable Student student(@Nullable String name, Book book, SchoolClass in) {
    return name == null
        ? null
        : byName(
            "student",
            name,
            book.enrolments().everyoneOf(in.id()),
            each -> List.of(each.name(), each.alias()));
  }

  static @Nullable Cloth cloth(@Nullable String name, Book book) {
    return name == null
        ? null
        : byName("cloth", name, book.cloths().all(), each -> List.of(each.name()));
  }

  static GarmentSheet garment(Typed typed, Book book) {
    return byName(
        "garment", typed.text("garment"), book.garments().all(), each -> List.of(each.name()));
  }

  /** A lesson by its number in the class, from 1, or by its title. */
  static @Nullable Lesson lesson(@Nullable String typed, Book book, SchoolClass in) {
    if (typed == null) {
      return null;
    }
    List<Lesson> all = book.lessons().of(in.id());
    if (typed.matches("[0-9]{1,3}")) {
      int number = Integer.parseInt(typed);
      if (all.isEmpty()) {
        throw Refused.field("lesson", "choice.none", typed, "");
      }
      if (number < 1 || number > all.size()) {
        throw Refused.field("lesson", "number.outside", typed, "1 – " + all.size());
      }
      return all.get(number - 1);
    }
    return byName("lesson", typed, all, each -> List.of(each.title()));
  }

  /** The lesson of {@code --lesson}, in the class of {@code --class}. */
  static Lesson neededLesson(Typed typed, Book book) {
    Lesson lesson = lesson(typed.text("lesson", ""), book, schoolClass(typed, book));
    if (lesson == null) {
      throw Refused.field("lesson", "field.needed", "", "");
    }
    return lesson;
  }

  /** A pack that comes with the program, by its name, or one in a folder. */
  static LessonPack pack(String typed) {
    for (PackSource each : BuiltInPacks.all()) {
      if (each.name().equals(typed.strip())) {
        return Refused.unless(new ReadPack().read(each));
      }
    }
    Path folder = AtBook.path("PACK", typed);
    if (!Files.isDirectory(folder)) {
      String known =
          BuiltInPacks.all().stream().map(PackSource::name).collect(Collectors.joining(", "));
      throw Refused.field("PACK", "choice.unknown", typed, known);
    }
    return Refused.unless(new ReadPack().read(new PackFolder(folder)));
  }

  private static <T> T byName(
      String field, @Nullable String typed, List<T> all, Function<T, List<String>> names) {
    String said = typed == null ? "" : typed.strip();
    String start = said.toLowerCase(Locale.ROOT);
    List<T> exact = new ArrayList<>();
    List<T> near = new ArrayList<>();
    for (T each : all) {
      List<String> lower =
          names.apply(each).stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
      if (lower.contains(start)) {
        exact.add(each);
      }
      if (!start.isEmpty() && lower.stream().anyMatch(name -> name.startsWith(start))) {
        near.add(each);
      }
    }
    List<T> found = exact.isEmpty() ? near : exact;
    if (found.size() == 1) {
      return found.get(0);
    }
    if (all.isEmpty()) {
      throw Refused.field(field, said.isEmpty() ? "field.needed" : "choice.none", said, "");
    }
    String known =
        (found.isEmpty() ? all : found)
            .stream().map(each -> names.apply(each).get(0)).collect(Collectors.joining(", "));
    String code = found.size() > 1 ? "choice.several" : "choice.unknown";
    throw Refused.field(field, typed == null ? "choice.needed" : code, said, known);
  }
}
