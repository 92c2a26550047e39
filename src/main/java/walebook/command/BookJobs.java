package walebook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;

/** Making and showing books. */
final class BookJobs {
  private BookJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "demo make",
            "command.demo.make",
            BookJobs::makeDemo,
            Option.of("to", "FOLDER", "command.option.to"),
            Option.of("seed", "NUMBER", "command.option.seed")),
        Job.shows(
            "book new",
            "command.book.new",
            BookJobs::make,
            Job.BOOK,
            Option.needed("name", "NAME", "command.option.book-name"),
            Option.of("unit", "UNIT", "command.option.unit")),
        Job.shows("book show", "command.book.show", AtBook.open(BookJobs::show), Job.BOOK));
  }

  private static Exit makeDemo(Typed typed, Terminal terminal) {
    Path folder = AtBook.path("to", typed.text("to", "demo"));
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      Place place = new Place.Path(folder.toString());
      throw new Refused(
          Exit.NO_BOOK,
          List.of(
              Problem.refuse("book.folder-read-only", place, String.valueOf(e.getMessage()), "")));
    }
    MakeDemoBook demo = new MakeDemoBook(new SqliteFiles(), terminal.clock());
    try (Book book =
        Refused.unless(demo.make(folder.resolve(MakeDemoBook.FILE), seed(typed)), Exit.NO_BOOK)) {
      return show(typed, terminal, book);
    }
  }

  private static long seed(Typed typed) {
    String text = typed.text("seed");
    if (text == null) {
      return MakeDemoBook.SEED;
    }
    if (!text.matches("-?[0-9]{1,18}")) {
      throw Refused.field("seed", "number.not-whole", text, String.valueOf(MakeDemoBook.SEED));
    }
    return Long.parseLong(text);
  }

  private static Exit make(Typed typed, Terminal terminal) {
    Unit unit = unit(typed.text("unit", "mm"));
    Path file = AtBook.path("book", typed.text("book", ""));
    try (Book book =
        Refused.unless(
            new SqliteFiles().make(file, typed.text("name", ""), false, unit, terminal.clock()),
            Exit.NO_BOOK)) {
      book.history().beginHere();
      return show(typed, terminal, book);
    }
  }

  private static Unit unit(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "mm" -> Unit.MM;
      case "cm" -> Unit.CM;
      case "in" -> Unit.INCH;
      default -> throw Refused.field("unit", "choice.unknown", text, "mm, cm, in");
    };
  }

  static Exit show(Typed typed, Terminal terminal, Book book) {
    ObjectNode json = Json.object();
    json.put("file", book.file().toString());
    json.put("name", book.info().name());
    json.put("invented", book.info().invented());
    json.put("lengthUnit", book.info().lengthUnit().sign());
    json.put("classes", book.classes().all().size());
    json.put("students", book.students().all().size());
    json.put("machines", book.machines().all().size());
    json.put("cloths", book.cloths().all().size());
    json.put("readings", book.clothLog().allReadings().size());
    json.put("pieces", book.pieces().count(PieceFilter.ALL));
    if (typed.has("json")) {
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    terminal.out().println(terminal.say("command.say.book", book.info().name(), book.file()));
    if (book.info().invented()) {
      terminal.out().println(terminal.say("command.say.invented"));
    }
    terminal
        .out()
        .println(
            terminal.say(
                "command.say.holds",
                json.get("classes").asInt(),
                json.get("students").asInt(),
                json.get("machines").asInt(),
                json.get("cloths").asInt(),
                json.get("readings").asInt(),
                json.get("pieces").asInt()));
    return Exit.DONE;
  }
}
