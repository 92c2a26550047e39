package walebook.desk.lessons;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.AddPack;
import walebook.act.lesson.ExportPack;
import walebook.act.lesson.KeepPackDraft;
import walebook.act.lesson.OpenPack;
import walebook.act.lesson.ReadPacks;
import walebook.act.lesson.ReadTaught;
import walebook.act.lesson.RemoveFromShelf;
import walebook.book.Ids;
import walebook.desk.common.Notice;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.lesson.LessonPack;
import walebook.lesson.PackDraft;
import walebook.lesson.ReadPack;
import walebook.problem.Problem;
import walebook.record.Lesson;

/** The packs that this book carries: into it, out of it, and those being written. */
public final class ShelfViewModel {
  private final Session session;
  private final ReadPack reader = new ReadPack();
  private final ObservableList<ReadPacks.Found> shelved = FXCollections.observableArrayList();
  private final ObservableList<ReadPacks.Unread> unread = FXCollections.observableArrayList();
  private final ObservableList<KeepPackDraft.Kept> drafts = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final ReadOnlyObjectWrapper<@Nullable Checked> checked =
      new ReadOnlyObjectWrapper<>(this, "checked");
  private final ReadOnlyObjectWrapper<@Nullable LessonPack> taught =
      new ReadOnlyObjectWrapper<>(this, "taught");
  private final ReadOnlyObjectWrapper<@Nullable WritePackViewModel> writing =
      new ReadOnlyObjectWrapper<>(this, "writing");

  /**
   * A pack that was looked at.
   *
   * @param of its folder, file or title
   * @param at where it can be looked at again; null for one inside the book
   */
  public record Checked(String of, @Nullable Path at, List<Problem> problems) {
    public Checked {
      problems = List.copyOf(problems);
    }
  }

  private record Room(ReadPacks.Packs packs, List<KeepPackDraft.Kept> drafts) {}

  public ShelfViewModel(Session session) {
    this.session = session;
    // Nothing but this place changes the shelf, and reading every pack takes too long for each
    // save.
    again();
  }

  /** The packs on the shelf, by name. */
  public ObservableList<ReadPacks.Found> shelved() {
    return shelved;
  }

  /** Those on the shelf that this program can't read. */
  public ObservableList<ReadPacks.Unread> unread() {
    return unread;
  }

  /** Packs being written, the last touched first. */
  public ObservableList<KeepPackDraft.Kept> drafts() {
    return drafts;
  }

  /** What has just happened. */
  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** What the last check found, or null while it is not shown. */
  public ReadOnlyObjectProperty<@Nullable Checked> checkedProperty() {
    return checked.getReadOnlyProperty();
  }

  /** The pack that is read as it was taught, or null. */
  public ReadOnlyObjectProperty<@Nullable LessonPack> taughtProperty() {
    return taught.getReadOnlyProperty();
  }

  /** The pack being written, or null. */
  public ReadOnlyObjectProperty<@Nullable WritePackViewModel> writingProperty() {
    return writing.getReadOnlyProperty();
  }

  /** Back to the list. */
  public void back() {
    WritePackViewModel now = writing.get();
    checked.set(null);
    taught.set(null);
    writing.set(null);
    if (now == null) {
      again();
    } else {
      now.keepDraft(this::again);
    }
  }

  /** Asks for a pack's zip or pack.yaml and puts the pack on the shelf. */
  public void add() {
    Path at = session.files().open(PickFile.Kind.PACK);
    if (at != null) {
      add(at);
    }
  }

  void add(Path at) {
    session.run(
        progress -> OpenPack.at(at, reader),
        answer -> {
          List<Problem> problems = answer.problems();
          checked.set(problems.isEmpty() ? null : new Checked(name(at), at, problems));
          if (answer.isGood()) {
            put(answer.value());
          }
        });
  }

  /** A pack goes by its folder, also where its pack.yaml was chosen. */
  private static String name(Path at) {
    Path folder = at.getParent();
    Path named = folder != null && at.endsWith("pack.yaml") ? folder : at;
    return String.valueOf(named.getFileName());
  }

  private void put(LessonPack pack) {
    session.run(
        progress -> new AddPack(session.book(), session.clock()).add(pack),
        came -> {
          tell(came, pack);
          again();
        });
  }

  /** Says what came of adding or saving a pack. */
  void tell(AddPack.Came came, LessonPack pack) {
    String title = pack.about().title();
    notice.set(
        new Notice(
            switch (came) {
              case NEW -> session.words().say("desk.lessons.shelf.added", title);
              case OTHER_VERSION -> session.words().say("desk.lessons.shelf.added-other", title);
              case KNOWN -> session.words().say("desk.lessons.shelf.known", title);
            },
            null));
  }

  /** Asks where to, and writes a pack as a zip. The chooser has asked about a file in the way. */
  public void export(LessonPack pack) {
    Path to = session.files().save(PickFile.Kind.PACK, pack.about().name() + ExportPack.ENDING);
    if (to == null) {
      return;
    }
    Path whole =
        to.toString().endsWith(ExportPack.ENDING)
            ? to
            : to.resolveSibling(to.getFileName() + ExportPack.ENDING);
    // Where the ending was added nobody was asked about that file.
    boolean asked = whole.equals(to);
    session.run(
        progress -> ExportPack.zip(pack, whole, asked),
        answer ->
            notice.set(
                new Notice(
                    answer.isGood()
                        ? session.words().say("desk.lessons.shelf.exported", answer.value())
                        : session.words().say(answer.problems().get(0)),
                    null)));
  }

  /** Takes a pack from the shelf, with a way back. */
  public void remove(ReadPacks.Found found) {
    remove(Objects.requireNonNull(found.shelfId()), found.pack().about().title());
  }

  /** The same for one that can't be read. */
  public void remove(ReadPacks.Unread found) {
    remove(found.pack().id(), found.pack().title());
  }

  private void remove(UUID id, String title) {
    RemoveFromShelf act = new RemoveFromShelf(session.book());
    session.run(
        progress -> act.remove(id),
        gone -> {
          notice.set(
              new Notice(
                  session.words().say("desk.lessons.shelf.removed", title), () -> undo(act, id)));
          again();
        });
  }

  private void undo(RemoveFromShelf act, UUID id) {
    session.run(
        progress -> {
          act.undo(id);
          return id;
        },
        back -> {
          notice.set(Notice.NONE);
          again();
        });
  }

  /** Reads a lesson's pack as it was when the class took it up. */
  public void readTaught(Lesson lesson) {
    session.run(
        progress -> new ReadTaught(session.book(), reader).pack(lesson.packId()),
        answer -> {
          if (answer.isGood()) {
            taught.set(answer.value());
          } else {
            checked.set(new Checked(lesson.title(), null, answer.problems()));
          }
        });
  }

  /** Begins a pack as a copy; one of the program gets a name of its own. */
  public void copy(LessonPack pack, @Nullable UUID shelfId) {
    PackDraft draft = PackDraft.of(pack);
    PackDraft named = shelfId == null ? draft.with("name", pack.about().name() + "-own") : draft;
    write(
        new KeepPackDraft.Kept(
            Ids.next().toString(), KeepPackDraft.base(pack, shelfId), named.typed()));
  }

  /** Goes on with a pack that was being written. */
  public void write(KeepPackDraft.Kept kept) {
    session.run(
        progress -> new KeepPackDraft(session.book()).pictures(kept.base()),
        pictures -> writing.set(new WritePackViewModel(session, reader, kept, pictures, this)));
  }

  /** Leaves the pack that was written, saved or thrown away. */
  void written(Notice says) {
    writing.set(null);
    notice.set(says);
    again();
  }

  /** Keeps what is typed before the book is closed. */
  public void rest() {
    WritePackViewModel now = writing.get();
    if (now != null) {
      now.rest();
    }
  }

  private void again() {
    session.run(
        progress ->
            new Room(
                new ReadPacks(session.book(), reader).all(),
                new KeepPackDraft(session.book()).all()),
        found -> {
          shelved.setAll(found.packs().found().stream().filter(each -> !each.ofProgram()).toList());
          unread.setAll(found.packs().unread());
          drafts.setAll(found.drafts());
        });
  }
}
