package walebook.desk.pieces;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
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
  private final ReadOnlyObjectWrapper<@Nullable Problem> problem =
      new ReadOnlyObjectWrapper<>(this, "problem");

  public PhotosViewModel(Session session) {
    this.session = session;
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
    for (Path file : files) {
      session.run(progress -> AddPhoto.read(file), this::taken);
    }
  }

  public void remove(ReadyPhoto photo) {
    photos.remove(photo);
  }

  void put(List<ReadyPhoto> next) {
    photos.setAll(next);
    problem.set(null);
  }

  private void taken(Answer<ReadyPhoto> answer) {
    if (answer.isGood()) {
      photos.add(answer.value());
    } else {
      problem.set(answer.problems().get(0));
    }
  }
}
