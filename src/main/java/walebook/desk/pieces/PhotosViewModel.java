package walebook.desk.pieces;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.AddPhoto;
import walebook.act.piece.ReadyPhoto;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.problem.Problem;

/** Photos that are to be kept with the piece being logged. */
public final class PhotosViewModel {
  private final Session session;
  private final ObservableList<ReadyPhoto> photos = FXCollections.observableArrayList();
  private final ObservableList<ReadyPhoto> photosView =
      FXCollections.unmodifiableObservableList(photos);
  private List<ReadyPhoto> kept = List.of();
  private int form;
  private int reading;
  private @Nullable Runnable waiting;
  private final ReadOnlyObjectWrapper<@Nullable Problem> problem =
      new ReadOnlyObjectWrapper<>(this, "problem");

  /** Photos of a form; {@code changed} is told when one was added or taken away. */
  public PhotosViewModel(Session session, Runnable changed) {
    this.session = session;
    photos.addListener((ListChangeListener<ReadyPhoto>) change -> changed.run());
  }

  /** In the order they were added. */
  public ObservableList<ReadyPhoto> photos() {
    return photosView;
  }

  /** Why the last file was not taken, or null. */
  public ReadOnlyObjectProperty<@Nullable Problem> problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** Asks for a file. */
  public void pick() {
    Path file = session.files().open(PickFile.Kind.PHOTO);
    if (file != null) {
      add(List.of(file));
    }
  }

  /** Takes files that were dropped or picked. */
  public void add(List<Path> files) {
    problem.set(null);
    int of = form;
    for (Path file : files) {
      reading++;
      session
          .background()
          .run(
              progress -> AddPhoto.read(file),
              answer -> taken(answer, of),
              fault -> {
                goOn(of, false);
                session.unexpected(fault);
              });
    }
  }

  /**
   * Whether files are still being read.
   *
   * @param then done once all are photos, in the place of what was to be done before; not at all
   *     where one is none, or another form is filled first
   */
  boolean isReading(Runnable then) {
    waiting = reading > 0 ? then : null;
    return reading > 0;
  }

  private void goOn(int of, boolean good) {
    if (of != form) {
      return;
    }
    reading--;
    Runnable then = waiting;
    if (!good || reading == 0) {
      waiting = null;
    }
    if (good && reading == 0 && then != null) {
      then.run();
    }
  }

  public void remove(ReadyPhoto photo) {
    photos.remove(photo);
  }

  /**
   * Shows other photos.
   *
   * @param inDraft those of them that are among the drafts already
   */
  void put(List<ReadyPhoto> next, List<ReadyPhoto> inDraft) {
    kept = List.copyOf(inDraft);
    form++;
    reading = 0;
    waiting = null;
    photos.setAll(next);
    problem.set(null);
  }

  /** All of them where they are others than those that are among the drafts; null otherwise. */
  @Nullable List<ReadyPhoto> toKeep() {
    List<ReadyPhoto> now = List.copyOf(photos);
    return now.equals(kept) ? null : now;
  }

  /** Says that these are among the drafts now, on the disk; null where none were to be kept. */
  void kept(@Nullable List<ReadyPhoto> inDraft) {
    if (inDraft != null) {
      kept = inDraft;
    }
  }

  /** A photo that was picked for another form is none of this one's. */
  private void taken(Answer<ReadyPhoto> answer, int of) {
    if (of == form && answer.isGood()) {
      photos.add(answer.value());
    } else if (of == form) {
      problem.set(answer.problems().get(0));
    }
    goOn(of, answer.isGood());
  }
}
