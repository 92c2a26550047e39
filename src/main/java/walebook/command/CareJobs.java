package walebook.command;

import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.book.BackUpBook;
import walebook.act.book.ListBackups;
import walebook.act.book.PreviewRestore;
import walebook.act.book.RescueBook;
import walebook.act.book.RestoreBackup;
import walebook.book.BookCopy;
import walebook.book.BookDifference;
import walebook.book.RescueReport;
import walebook.book.open.SqliteCare;

/** Backups of a book, going back to one, and rescue of a damaged book. */
final class CareJobs {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);
  private static final double BYTES_PER_MB = 1e6;
  private static final Option COPY = Option.needed("copy", "FILE", "command.option.copy");

  private CareJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows("book backups", "command.book.backups", CareJobs::list, Job.BOOK),
        Job.shows("book backup", "command.book.backup", CareJobs::make, Job.BOOK),
        Job.shows(
            "book restore", "command.book.restore", CareJobs::restore, Job.BOOK, COPY, Job.SURE),
        Job.shows(
            "book rescue",
            "command.book.rescue",
            CareJobs::rescue,
            Job.BOOK,
            Option.needed("into", "FILE", "command.option.into")));
  }

  private static Path book(Typed typed) {
    return AtBook.path("book", typed.text("book", ""));
  }

  private static Exit list(Typed typed, Terminal terminal) {
    List<ListBackups.Backup> all =
        Refused.unless(new ListBackups(new SqliteCare()).of(book(typed)), Exit.NO_BOOK);
    if (typed.has("json")) {
      ArrayNode json = Json.array();
      for (ListBackups.Backup each : all) {
        ObjectNode node = json.addObject();
        node.put("file", each.copy().file().toString());
        node.put("madeAt", each.copy().madeAt().toString());
        node.put("why", each.copy().why().name().toLowerCase(Locale.ROOT));
        node.put("bytes", each.copy().bytes());
        node.put("pieces", each.pieces());
      }
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.made"),
                terminal.say("command.column.megabytes"),
                terminal.say("command.column.held-pieces"),
                terminal.say("command.column.file")));
    for (ListBackups.Backup each : all) {
      table.row(
          List.of(
              WHEN.format(each.copy().madeAt().atZone(terminal.clock().getZone())),
              String.format(Locale.ROOT, "%.1f", each.copy().bytes() / BYTES_PER_MB),
              each.pieces() == ListBackups.UNREADABLE ? "–" : String.valueOf(each.pieces()),
              each.copy().file().toString()));
    }
    terminal.out().println(all.isEmpty() ? terminal.say("command.say.no-backups") : table);
    return Exit.DONE;
  }

  private static Exit make(Typed typed, Terminal terminal) {
    BookCopy made =
        Refused.unless(
            new BackUpBook(new SqliteCare(), terminal.clock())
                .now(book(typed), BookCopy.Why.ASKED, null),
            Exit.NO_BOOK);
    return said(typed, terminal, "command.say.backed-up", made.file());
  }

  /** Without a yes it only shows what would change. */
  private static Exit restore(Typed typed, Terminal terminal) {
    Path copy = AtBook.path("copy", typed.text("copy", ""));
    if (!typed.has("sure")) {
      return preview(typed, terminal, copy);
    }
    Path before =
        Refused.unless(
            new RestoreBackup(new SqliteCare(), terminal.clock()).to(book(typed), copy),
            Exit.NO_BOOK);
    return said(typed, terminal, "command.say.restored", before);
  }

  private static Exit preview(Typed typed, Terminal terminal, Path copy) {
    BookDifference difference =
        Refused.unless(new PreviewRestore(new SqliteCare()).of(book(typed), copy), Exit.NO_BOOK);
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("nowReadable", difference.nowReadable());
      ObjectNode counts = json.putObject("counts");
      difference
          .counts()
          .forEach(
              each ->
                  counts
                      .putObject(each.table())
                      .put("now", each.now())
                      .put("then", each.then())
                      .put("earlier", each.otherVersion()));
      difference.lost().forEach(json.putArray("lost")::add);
      difference.back().forEach(json.putArray("back")::add);
      difference.changed().forEach(json.putArray("changed")::add);
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.table"),
                terminal.say("command.column.now"),
                terminal.say("command.column.then"),
                terminal.say("command.column.earlier")));
    difference.counts().stream()
        .filter(each -> each.now() > 0 || each.then() > 0)
        .forEach(
            each ->
                table.row(
                    List.of(
                        each.table(),
                        String.valueOf(each.now()),
                        String.valueOf(each.then()),
                        String.valueOf(each.otherVersion()))));
    terminal.out().println(table);
    codes(terminal, "command.say.would-lose", difference.lost());
    codes(terminal, "command.say.would-return", difference.back());
    codes(terminal, "command.say.would-change", difference.changed());
    terminal.out().println(terminal.say("command.say.restore-sure"));
    return Exit.DONE;
  }

  private static void codes(Terminal terminal, String key, List<String> codes) {
    if (!codes.isEmpty()) {
      terminal.out().println(terminal.say(key, codes.size(), String.join(" ", codes)));
    }
  }

  private static Exit rescue(Typed typed, Terminal terminal) {
    Path into = AtBook.path("into", typed.text("into", ""));
    RescueReport report =
        Refused.unless(
            new RescueBook(new SqliteCare(), terminal.words(), terminal.clock())
                .into(book(typed), into),
            Exit.NO_BOOK);
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("into", report.into().toString());
      json.put("badPages", report.badPages());
      json.put("standIns", report.standIns());
      ObjectNode tables = json.putObject("tables");
      report
          .tables()
          .forEach(
              each ->
                  tables.putObject(each.name()).put("out", each.out()).put("lost", each.lost()));
      report.lostPieces().forEach(json.putArray("lostPieces")::add);
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.table"),
                terminal.say("command.column.came-out"),
                terminal.say("command.column.known-lost")));
    report
        .tables()
        .forEach(
            each ->
                table.row(
                    List.of(each.name(), String.valueOf(each.out()), String.valueOf(each.lost()))));
    terminal.out().println(table);
    codes(terminal, "command.say.lost-pieces", report.lostPieces());
    terminal
        .out()
        .println(
            terminal.say(
                "command.say.rescued", report.into(), report.badPages(), report.standIns()));
    return Exit.DONE;
  }

  private static Exit said(Typed typed, Terminal terminal, String key, Path file) {
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(Json.object().put("file", file.toString()))
                : terminal.say(key, file));
    return Exit.DONE;
  }
}
