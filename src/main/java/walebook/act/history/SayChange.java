package walebook.act.history;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.Change;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.words.Words;

/** Changes in words: saved piece K7Q-2MX, put cloth Grey jersey in the bin. */
public final class SayChange {
  private static final String LESSON = "lesson";
  private static final List<String> NAMES = List.of("code", "name", "title", "number", "caption");

  private final Book book;
  private final Words words;
  private final boolean namesHidden;

  /** Words for a book's changes; {@code namesHidden} puts aliases in the place of names. */
  public SayChange(Book book, Words words, boolean namesHidden) {
    this.book = book;
    this.words = words;
    this.namesHidden = namesHidden;
  }

  /**
   * What a step did: by what it was done for, where a class was begun, a lesson taken up or planned
   * again; else by its first change, and how many more there were.
   */
  public String step(List<Change> changes) {
    Change first = changes.get(0);
    if (changes.size() == 1) {
      return change(first);
    }
    String planned = planned(changes);
    if (!planned.isEmpty()) {
      return words.say("act.history.planned-again", planned);
    }
    Change whole = whole(changes);
    if (whole != null && whole.isNew()) {
      String now = nowOf(whole);
      String name = now.isEmpty() ? "" : name(whole.entity(), whole.entityId(), now);
      return whole.entity().equals(LESSON)
          ? words.say("act.history.taken-up", name)
          : words.say("act.history.class-begun", name);
    }
    return words.say("act.history.more", change(whole == null ? first : whole), changes.size() - 1);
  }

  /** The class or the lesson that all else in the step came with, or null. */
  private static @Nullable Change whole(List<Change> changes) {
    if (changes.stream().anyMatch(each -> each.entity().equals("test_piece"))) {
      return null;
    }
    for (String entity : List.of("school_class", LESSON)) {
      for (Change each : changes) {
        if (each.entity().equals(entity)) {
          return each;
        }
      }
    }
    return null;
  }

  /** The title of the lesson whose plan is all that changed; empty where there was more. */
  private String planned(List<Change> changes) {
    Change part = null;
    for (Change each : changes) {
      if (each.entity().startsWith("planned_")) {
        part = each;
      } else if (!each.entity().equals(LESSON) || each.isNew()) {
        return "";
      }
    }
    if (part == null || part.act().equals("undo") || part.act().equals("redo")) {
      return "";
    }
    String id = book.history().textIn(nowOf(part), part.entity(), part.entityId(), "lesson_id");
    Lesson lesson = id.isEmpty() ? null : book.lessons().find(UUID.fromString(id));
    return lesson == null ? "" : lesson.title();
  }

  /** What one change did. */
  public String change(Change change) {
    String thing = thing(change);
    if (change.isNew()) {
      return words.say("act.history.added", thing);
    }
    return switch (change.act()) {
      case "bin.put", "bin.gone" -> words.say("act.history.binned", thing);
      case "bin.restore" -> words.say("act.history.restored", thing);
      case "undo" -> words.say("act.history.undone", thing);
      case "redo" -> words.say("act.history.redone", thing);
      default -> {
        if (change.after() == null) {
          yield words.say("act.history.removed", thing);
        }
        yield words.say(
            change.before() == null ? "act.history.added" : "act.history.changed", thing);
      }
    };
  }

  /** Who made it, or that nobody said so. */
  public String who(Change change) {
    UUID student = change.by().studentId();
    if (namesHidden && student != null) {
      var found = book.students().find(student);
      return found == null ? words.say("act.history.somebody") : found.alias();
    }
    return change.by().name().isEmpty() ? words.say("act.history.somebody") : change.by().name();
  }

  private String thing(Change change) {
    return thing(change.entity(), change.entityId(), nowOf(change));
  }

  /** The row of a change as JSON, as it is or was last; empty where nothing is known of it. */
  private String nowOf(Change change) {
    String json = change.after() == null ? change.before() : change.after();
    if (json == null) {
      json = book.history().now(change.entity(), change.entityId());
    }
    if (json == null) {
      List<Change> all = book.history().of(change.entity(), change.entityId());
      json = all.stream().map(Change::before).filter(Objects::nonNull).findFirst().orElse(null);
    }
    return json == null ? "" : json;
  }

  /** A thing by its kind and name, from what the history holds of it. */
  public String thing(String entity, UUID id, String json) {
    String key = "act.thing." + entity.replace('_', '-');
    String name = json.isEmpty() ? "" : name(entity, id, json);
    return words.say(words.has(key) ? key : "act.thing.other", name).strip();
  }

  private String name(String entity, UUID id, String json) {
    if (namesHidden && entity.equals("student")) {
      return book.history().textIn(json, entity, id, "alias");
    }
    for (String column : NAMES) {
      String text = book.history().textIn(json, entity, id, column);
      if (!text.isEmpty()) {
        return PieceCode.isCode(text) ? PieceCode.spoken(text) : text;
      }
    }
    return "";
  }
}
