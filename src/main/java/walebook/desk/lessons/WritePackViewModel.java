package walebook.desk.lessons;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.AddPack;
import walebook.act.lesson.ExportPack;
import walebook.act.lesson.KeepPackDraft;
import walebook.desk.common.Background;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.lesson.LessonPack;
import walebook.lesson.PackDraft;
import walebook.lesson.PackPicture;
import walebook.lesson.PlanCounts;
import walebook.lesson.ReadPack;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Tier;

/**
 * A pack being written: its fields, what the check says of them while one types, what its plan
 * comes to, and saving.
 */
public final class WritePackViewModel {
  private final Session session;
  private final ReadPack reader;
  private final KeepPackDraft.Kept begun;
  private final List<PackPicture> pictures;
  private final ShelfViewModel shelf;
  private final FormFields fields;
  private final ObservableList<String> headings = FXCollections.observableArrayList();
  private final ObjectProperty<WritePart> part =
      new SimpleObjectProperty<>(this, "part", WritePart.TEXT);
  private final IntegerProperty edits = new SimpleIntegerProperty(this, "edits");
  private final ObjectProperty<String> attention =
      new SimpleObjectProperty<>(this, "attention", "");
  private final ReadOnlyObjectWrapper<PackDraft.@Nullable Checked> checked =
      new ReadOnlyObjectWrapper<>(this, "checked");
  private final ReadOnlyObjectWrapper<@Nullable PlanCounts> counts =
      new ReadOnlyObjectWrapper<>(this, "counts");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final DraftKeeper draftKeeper = new DraftKeeper();
  private final Map<String, String> minutesOf = new HashMap<>();
  private Map<Tier, Integer> tiers = Map.of(Tier.STANDARD, 12);
  private int kept;
  private int asked;
  private boolean arranging;
  private boolean saving;

  /**
   * A form over a draft.
   *
   * @param shelf told when the pack is saved or thrown away
   */
  WritePackViewModel(
      Session session,
      ReadPack reader,
      KeepPackDraft.Kept begun,
      List<PackPicture> pictures,
      ShelfViewModel shelf) {
    this.session = session;
    this.reader = reader;
    this.begun = begun;
    this.pictures = List.copyOf(pictures);
    this.shelf = shelf;
    this.fields = new FormFields(this::edited, PackForm.fields());
    arranging = true;
    fields.put(begun.typed());
    arranging = false;
    arrangeSteps();
    edits.set(0);
    SchoolClass of = session.schoolClassProperty().get();
    if (of != null) {
      session.run(
          progress -> session.book().enrolments().studentsOf(of.id()),
          students -> {
            if (!students.isEmpty()) {
              tiers =
                  students.stream()
                      .collect(Collectors.groupingBy(Student::tier, Collectors.summingInt(e -> 1)));
            }
            check();
          });
    } else {
      check();
    }
  }

  /** A field by its path in the pack. */
  public FormFields.Field field(String path) {
    return fields.field(path);
  }

  public String text(String path) {
    return fields.text(path);
  }

  /** The headings of the lesson's text that are its steps. */
  public ObservableList<String> headings() {
    return headings;
  }

  /** Which part of the form is shown. */
  public ObjectProperty<WritePart> partProperty() {
    return part;
  }

  /** Counts what was typed. */
  public IntegerProperty editsProperty() {
    return edits;
  }

  /** The field that wants attention, set anew each time; empty for none. */
  public ObjectProperty<String> attentionProperty() {
    return attention;
  }

  /** What the check says of what is typed; null until it was first checked. */
  public ReadOnlyObjectProperty<PackDraft.@Nullable Checked> checkedProperty() {
    return checked.getReadOnlyProperty();
  }

  /** What the plan comes to; null while that can't be told. */
  public ReadOnlyObjectProperty<@Nullable PlanCounts> countsProperty() {
    return counts.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** How many students the counts are for. */
  public int students() {
    return tiers.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** True when the counts are for the class in hand, false when for twelve students supposed. */
  public boolean ofClass() {
    return session.schoolClassProperty().get() != null;
  }

  /** Goes to where a problem is mended. */
  public void goTo(String field) {
    if (!field.isEmpty()) {
      part.set(WritePart.of(field));
      attention.set("");
      attention.set(field);
    }
  }

  /** Puts the pack on the book's shelf, or shows what is in the way. */
  public void save() {
    if (saving) {
      return;
    }
    saving = true;
    PackDraft draft = draft();
    Background.Work<Saved> work =
        progress -> {
          PackDraft.Checked found = draft.check(reader);
          if (!found.pack().isGood()) {
            return new Saved(found, null);
          }
          AddPack.Came came =
              new AddPack(session.book(), session.clock()).add(found.pack().value());
          draftKeeper.drop();
          return new Saved(found, came);
        };
    session
        .background()
        .run(
            work,
            this::saved,
            fault -> {
              saving = false;
              session.unexpected(fault);
            });
  }

  private record Saved(PackDraft.Checked found, AddPack.@Nullable Came came) {}

  private void saved(Saved saved) {
    AddPack.Came came = saved.came();
    saving = false;
    if (came == null) {
      refused(saved.found());
      return;
    }
    kept = edits.get();
    LessonPack pack = saved.found().pack().value();
    shelf.tell(came, pack);
    shelf.written(shelf.noticeProperty().get());
  }

  /** Asks for a folder and writes the pack's own folder into it; the draft stays. */
  public void saveFolder() {
    PackDraft.Checked found = draft().check(reader);
    if (!found.pack().isGood()) {
      refused(found);
      return;
    }
    Path into = session.files().open(PickFile.Kind.FOLDER);
    if (into == null) {
      return;
    }
    session.run(
        progress -> ExportPack.folder(found.pack().value(), into),
        answer ->
            notice.set(
                new Notice(
                    answer.isGood()
                        ? session.words().say("desk.lessons.write.in-folder", answer.value())
                        : session.words().say(answer.problems().get(0)),
                    null)));
  }

  /** Throws away what is typed. */
  public void discard() {
    kept = edits.get();
    session.run(
        progress -> {
          draftKeeper.drop();
          return begun.owner();
        },
        gone -> shelf.written(Notice.NONE));
  }

  /** Keeps what is typed, so that it is there again after a crash. */
  public void keepDraft() {
    keepDraft(() -> {});
  }

  /** The same, and what is to follow once it is on the disk. */
  void keepDraft(Runnable then) {
    if (edits.get() == kept) {
      then.run();
      return;
    }
    kept = edits.get();
    KeepPackDraft.Kept now = now();
    session.run(
        progress -> {
          draftKeeper.keep(now);
          return now;
        },
        done -> then.run());
  }

  /** The same at once, before the book is closed. */
  void rest() {
    if (edits.get() != kept) {
      kept = edits.get();
      draftKeeper.keep(now());
    }
  }

  /** Work runs side by side: what was still to be kept must not come back after the dropping. */
  private final class DraftKeeper {
    private boolean dropped;

    synchronized void keep(KeepPackDraft.Kept now) {
      if (!dropped) {
        new KeepPackDraft(session.book()).keep(now);
      }
    }

    synchronized void drop() {
      dropped = true;
      new KeepPackDraft(session.book()).drop(begun.owner());
    }
  }

  /** Checks what is typed, away from the window; an answer that came too late is passed over. */
  public void check() {
    int mine = ++asked;
    PackDraft draft = draft();
    session.run(
        progress -> draft.check(reader),
        found -> {
          if (mine == asked) {
            checked.set(found);
            counts.set(draft.counts(tiers));
          }
        });
  }

  private void refused(PackDraft.Checked found) {
    checked.set(found);
    List<Problem> atFields = new ArrayList<>();
    for (PackDraft.Told each : found.told()) {
      Problem problem = each.problem();
      atFields.add(
          new Problem(
              problem.code(),
              Place.field(each.field()),
              problem.found(),
              problem.wanted(),
              problem.weight()));
    }
    fields.show(atFields);
    notice.set(
        new Notice(session.words().say("desk.lessons.write.refused", found.told().size()), null));
    found.told().stream()
        .filter(each -> each.problem().refuses() && !each.field().isEmpty())
        .findFirst()
        .ifPresent(each -> goTo(each.field()));
  }

  private void edited() {
    if (arranging) {
      return;
    }
    arrangeSteps();
    edits.set(edits.get() + 1);
    notice.set(Notice.NONE);
  }

  /** Each heading keeps its minutes when others come before it or go. */
  private void arrangeSteps() {
    List<String> now = PackDraft.headings(fields.text(PackDraft.LESSON));
    for (int i = 0; i < headings.size(); i++) {
      minutesOf.put(headings.get(i), fields.text(PackForm.minutes(i)));
    }
    if (now.equals(headings)) {
      return;
    }
    boolean first = headings.isEmpty();
    headings.setAll(now.subList(0, Math.min(now.size(), PackForm.STEPS)));
    arranging = true;
    for (int i = 0; i < PackForm.STEPS && !first; i++) {
      String minutes = i < headings.size() ? minutesOf.getOrDefault(headings.get(i), "") : "";
      fields.field(PackForm.minutes(i)).text().set(minutes);
    }
    arranging = false;
  }

  private PackDraft draft() {
    return new PackDraft(typed(), pictures);
  }

  private KeepPackDraft.Kept now() {
    return new KeepPackDraft.Kept(begun.owner(), begun.base(), typed());
  }

  private Map<String, String> typed() {
    Map<String, String> typed = new LinkedHashMap<>(fields.typed());
    typed.values().removeIf(String::isEmpty);
    return typed;
  }
}
