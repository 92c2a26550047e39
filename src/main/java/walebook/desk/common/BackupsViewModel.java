package walebook.desk.common;

import java.nio.file.Path;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.book.BackUpBook;
import walebook.act.book.ListBackups;
import walebook.act.book.PreviewRestore;
import walebook.book.BookCare;
import walebook.book.BookCopy;
import walebook.book.BookDifference;
import walebook.problem.Problem;
import walebook.record.PieceCode;
import walebook.words.Words;

/** The backups of one book: what is there, what going back to one would change, one more now. */
public final class BackupsViewModel {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final double BYTES_PER_MB = 1e6;
  private static final int MOST_CODES = 30;

  private final Path book;
  private final BookCare care;
  private final Words words;
  private final Clock clock;
  private final Background background;
  private final Consumer<Throwable> unexpected;
  private final Consumer<Path> goBack;
  private final ObservableList<ListBackups.Backup> backups = FXCollections.observableArrayList();
  private final ObservableList<String> changes = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<ListBackups.@Nullable Backup> chosen =
      new ReadOnlyObjectWrapper<>(this, "chosen");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");

  /**
   * Makes it and lists the backups.
   *
   * @param goBack closes the book, goes back to a backup and opens the book again
   */
  public BackupsViewModel(
      Path book,
      BookCare care,
      Words words,
      Clock clock,
      Background background,
      Consumer<Throwable> unexpected,
      Consumer<Path> goBack) {
    this.book = book;
    this.care = care;
    this.words = words;
    this.clock = clock;
    this.background = background;
    this.unexpected = unexpected;
    this.goBack = goBack;
    read();
  }

  /** Newest first. */
  public ObservableList<ListBackups.Backup> backups() {
    return backups;
  }

  /** What going back to the chosen one would change, a sentence each. */
  public ObservableList<String> changes() {
    return changes;
  }

  /** The backup that is looked at; null when none is. */
  public ReadOnlyObjectProperty<ListBackups.@Nullable Backup> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** What was done, or what is in the way. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /** When, how many pieces, how large, what for. */
  public String line(ListBackups.Backup backup) {
    String when = WHEN.format(backup.copy().madeAt().atZone(clock.getZone()));
    String size = String.format(Locale.ROOT, "%.1f", backup.copy().bytes() / BYTES_PER_MB);
    String line =
        backup.pieces() == ListBackups.UNREADABLE
            ? words.say("desk.common.backups.unreadable", when, size)
            : words.say("desk.common.backups.line", when, backup.pieces(), size);
    String why = why(backup.copy().why());
    return why.isEmpty() ? line : line + ' ' + why;
  }

  private String why(BookCopy.Why why) {
    return switch (why) {
      case ROUTINE -> "";
      case ASKED -> words.say("desk.common.backups.asked");
      case BEFORE_MIGRATION -> words.say("desk.common.backups.before-migration");
      case BEFORE_GATHERING -> words.say("desk.common.backups.before-gathering");
      case BEFORE_RESTORE -> words.say("desk.common.backups.before-restore");
    };
  }

  /** Makes one more now. */
  public void make() {
    background.run(
        progress -> new BackUpBook(care, clock).now(book, BookCopy.Why.ASKED, null),
        made -> {
          says.set(
              made.isGood() ? words.say("desk.common.backups.made") : sentences(made.problems()));
          read();
        },
        unexpected);
  }

  /** Looks at what going back to a backup would change. */
  public void choose(ListBackups.Backup backup) {
    changes.clear();
    chosen.set(null);
    says.set("");
    background.run(
        progress -> new PreviewRestore(care).of(book, backup.copy().file()),
        found -> {
          if (found.isGood()) {
            changes.setAll(sentences(found.value()));
            chosen.set(backup);
          } else {
            says.set(sentences(found.problems()));
          }
        },
        unexpected);
  }

  /** Says that the book was gone back with, where its backups are listed anew. */
  public void wentBack() {
    says.set(words.say("desk.common.backups.went-back"));
  }

  /** Goes back to the backup that is looked at. */
  public void goBack() {
    ListBackups.Backup now = chosen.get();
    if (now != null) {
      goBack.accept(now.copy().file());
    }
  }

  /** Lists them anew. */
  public void read() {
    background.run(
        progress -> new ListBackups(care).of(book),
        found -> {
          if (!found.isGood()) {
            says.set(sentences(found.problems()));
          } else if (!backups.equals(found.value())) {
            backups.setAll(found.value());
          }
        },
        unexpected);
  }

  private List<String> sentences(BookDifference difference) {
    List<String> all = new java.util.ArrayList<>();
    if (!difference.nowReadable()) {
      all.add(words.say("desk.common.backups.now-unreadable"));
    } else if (difference.isNone()) {
      all.add(words.say("desk.common.backups.same"));
    }
    if (!difference.lost().isEmpty()) {
      all.add(said("desk.common.backups.lost", difference.lost()));
    }
    if (!difference.back().isEmpty()) {
      all.add(said("desk.common.backups.back", difference.back()));
    }
    if (!difference.changed().isEmpty()) {
      all.add(said("desk.common.backups.changed", difference.changed()));
    }
    for (BookDifference.Count each : difference.counts()) {
      String name = words.say("desk.common.table." + each.table().replace('_', '-'));
      if (each.now() != each.then()) {
        all.add(words.say("desk.common.backups.count", name, each.now(), each.then()));
      }
      if (each.otherVersion() > 0) {
        all.add(words.say("desk.common.backups.earlier", name, each.otherVersion()));
      }
    }
    return all;
  }

  private String said(String key, List<String> codes) {
    String named =
        codes.stream().limit(MOST_CODES).map(PieceCode::spoken).collect(Collectors.joining(" "));
    return words.say(key, codes.size(), codes.size() > MOST_CODES ? named + " …" : named);
  }

  private String sentences(List<Problem> problems) {
    return String.join("\n", problems.stream().map(words::say).toList());
  }
}
