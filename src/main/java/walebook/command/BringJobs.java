package walebook.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import walebook.act.bring.BringInLog;
import walebook.act.bring.BringInPieces;
import walebook.act.bring.BringInRoster;
import walebook.act.bring.BringPlan;
import walebook.act.bring.ReadSpreadsheet;
import walebook.act.bring.Spreadsheet;
import walebook.act.bring.SpreadsheetFile;
import walebook.act.bring.Trial;
import walebook.act.bring.TryRows;
import walebook.act.bring.UndoBringIn;
import walebook.act.bring.WriteRejected;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.ColumnUnit;
import walebook.act.bring.match.DayOrder;
import walebook.act.bring.match.GuessColumns;
import walebook.book.Book;
import walebook.record.By;
import walebook.record.Keyed;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** In from spreadsheets: a roster or test pieces, tried first or at once, and taken back. */
final class BringJobs {
  private BringJobs() {}

  static List<Job> all() {
    return List.of(
        job("bring roster", "command.bring.roster", BringWhat.ROSTER),
        job("bring pieces", "command.bring.pieces", BringWhat.PIECES),
        job("bring cloths", "command.bring.cloths", BringWhat.CLOTHS),
        job("bring readings", "command.bring.readings", BringWhat.READINGS),
        job("bring washes", "command.bring.washes", BringWhat.WASHES),
        job("bring notes", "command.bring.notes", BringWhat.NOTES),
        Job.shows(
                "bring undo",
                "command.bring.undo",
                AtBook.open(BringJobs::undo),
                Job.BOOK,
                Option.of("by", "NAME", "command.option.bring-by"))
            .operand("STEP", "command.option.bring-step"));
  }

  private static Job job(String words, String says, BringWhat what) {
    List<Option> options =
        new ArrayList<>(
            List.of(
                Job.BOOK,
                Job.CLASS,
                Option.of("sheet", "NAME", "command.option.sheet"),
                Option.many("map", "COLUMN=FIELD", "command.option.map"),
                Option.flag("dry-run", "command.option.dry-run"),
                Option.flag("good-rows", "command.option.good-rows"),
                Option.of("rejected", "FILE", "command.option.rejected"),
                Option.flag("replace", "command.option.replace"),
                Option.of("by", "NAME", "command.option.bring-by")));
    if (what == BringWhat.PIECES) {
      options.add(Option.of("student", "NAME", "command.option.bring-student"));
    }
    if (what != BringWhat.ROSTER) {
      options.add(Option.of("days", "ORDER", "command.option.days"));
      options.add(Job.SURE);
    }
    return Job.shows(
            words,
            says,
            AtBook.open((typed, terminal, book) -> bring(typed, terminal, book, what)),
            options.toArray(new Option[0]))
        .operand("FILE", "command.option.spreadsheet");
  }

  private static Exit bring(Typed typed, Terminal terminal, Book book, BringWhat what) {
    SchoolClass of = Pick.schoolClass(typed, book);
    ReadSpreadsheet read = new ReadSpreadsheet(book, terminal.words());
    Path path = AtBook.path("FILE", typed.operand(0));
    SpreadsheetFile file = Refused.unless(read.open(path, what));
    String name = typed.text("sheet", file.usual());
    Spreadsheet sheet = Refused.unless(read.read(file, name, what));
    Student student =
        what == BringWhat.PIECES ? Pick.student(typed.text("student"), book, of) : null;
    BringPlan plan =
        new BringPlan(
            what,
            sheet,
            columns(typed, sheet, read.guess(sheet, what), what),
            of.id(),
            student == null ? null : student.id(),
            order(typed, what),
            typed.has("good-rows"),
            what != BringWhat.ROSTER && typed.has("sure"));
    boolean dry = typed.has("dry-run");
    Trial trial = dry ? tried(plan, terminal, book) : brought(plan, typed, terminal, book);
    if (typed.text("rejected") != null && trial.hasProblems()) {
      Path rejected = AtBook.path("rejected", typed.text("rejected", ""));
      Refused.unless(
          new WriteRejected(terminal.words()).write(rejected, sheet, trial, typed.has("replace")));
    }
    new ShowBring(terminal, typed.has("json"), column -> read.saysNothingNew(sheet, what, column))
        .show(file, plan, trial, dry);
    boolean nothing = !dry && trial.stepId() == null && trial.hasProblems();
    return nothing ? Exit.REFUSED : Exit.DONE;
  }

  private static Trial tried(BringPlan plan, Terminal terminal, Book book) {
    return Refused.unless(
        new TryRows(
                book, SharedTables.read(), terminal.words(), terminal.clock(), terminal.chance())
            .of(plan));
  }

  private static Trial brought(BringPlan plan, Typed typed, Terminal terminal, Book book) {
    By by = By.named(typed.text("by", ""));
    SharedTables tables = SharedTables.read();
    Words words = terminal.words();
    return Refused.unless(
        switch (plan.what()) {
          case ROSTER ->
              new BringInRoster(book, tables, words, terminal.clock(), terminal.chance())
                  .bring(plan, by);
          case PIECES ->
              new BringInPieces(book, tables, words, terminal.clock(), terminal.chance())
                  .bring(plan, by);
          case CLOTHS, READINGS, WASHES, NOTES ->
              new BringInLog(book, tables, words, terminal.clock(), terminal.chance())
                  .bring(plan, by);
        });
  }

  /** The guesses with what was typed in their place: {@code C=gauge}, {@code C=gauge:cm}. */
  private static List<ColumnMatch> columns(
      Typed typed, Spreadsheet sheet, List<ColumnMatch> guesses, BringWhat what) {
    List<ColumnMatch> columns = new ArrayList<>(guesses);
    for (String each : typed.all("map")) {
      int at = each.lastIndexOf('=');
      int column = at < 0 ? -1 : column(each.substring(0, at).strip(), sheet);
      if (column < 0) {
        throw Refused.field("map", "bring.map-form", each, "C=gauge:cm");
      }
      ColumnMatch match = match(each.substring(at + 1), sheet.headers().get(column), what);
      columns.replaceAll(
          other ->
              !match.isLeftOut() && other.field().equals(match.field())
                  ? ColumnMatch.LEFT_OUT
                  : other);
      columns.set(column, match);
    }
    return columns;
  }

  private static int column(String typed, Spreadsheet sheet) {
    for (int i = 0; i < sheet.headers().size(); i++) {
      if (sheet.headers().get(i).equalsIgnoreCase(typed)
          || Spreadsheet.letters(i).equals(typed.toUpperCase(Locale.ROOT))) {
        return i;
      }
    }
    return -1;
  }

  private static ColumnMatch match(String typed, String header, BringWhat what) {
    String[] parts = typed.split(":", 2);
    String key = parts[0].strip();
    if (key.isEmpty() || key.equals("-")) {
      return ColumnMatch.LEFT_OUT;
    }
    BringField field = BringField.find(what, key);
    if (field == null) {
      String known = String.join(", ", BringField.of(what).stream().map(BringField::key).toList());
      throw Refused.field("map", "choice.unknown", key, known);
    }
    if (parts.length == 1) {
      return GuessColumns.match(what, key, header);
    }
    String unit = ColumnUnit.sign(parts[1]);
    if (unit.isEmpty() || !ColumnUnit.fits(field, unit)) {
      throw Refused.field("map", "bring.unit", parts[1], "");
    }
    return new ColumnMatch(key, unit);
  }

  private static DayOrder order(Typed typed, BringWhat what) {
    String text = what == BringWhat.ROSTER ? null : typed.text("days");
    if (text == null) {
      return DayOrder.UNKNOWN;
    }
    DayOrder order = Keyed.find(DayOrder.class, text);
    if (order == null) {
      throw Refused.field("days", "choice.unknown", text, "day-first, month-first");
    }
    return order;
  }

  private static Exit undo(Typed typed, Terminal terminal, Book book) {
    UUID step = step(typed.operand(0));
    By by = By.named(typed.text("by", ""));
    UUID undone = Refused.unless(new UndoBringIn(book).undo(Objects.requireNonNull(step), by));
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(Json.object().put("step", undone.toString()))
                : terminal.say("command.say.bring-undone"));
    return Exit.DONE;
  }

  private static UUID step(String typed) {
    try {
      return UUID.fromString(typed);
    } catch (IllegalArgumentException e) {
      throw Refused.field("step", "undo.nothing", typed, "");
    }
  }
}
