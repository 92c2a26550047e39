package walebook.desk.pieces;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.ReadyPhoto;
import walebook.desk.common.Session;

/**
 * Which edit of a form is among the drafts. One counts as kept once it is on the disk; where it
 * could not be written the next call tries again.
 */
final class FormKept {
  private final Session session;
  private final PhotosViewModel photos;
  private int form;
  private int kept;
  private int underWay;

  FormKept(Session session, PhotosViewModel photos) {
    this.session = session;
    this.photos = photos;
  }

  /** A form was filled; its edits are counted from 1 on. */
  void begin() {
    form++;
    kept = 0;
    underWay = 0;
  }

  /** Keeps an edit away from the window, unless it is kept or on its way. */
  void keep(FormStart start, PieceEntry entry, int edit) {
    if (edit == kept || edit == underWay) {
      return;
    }
    underWay = edit;
    int of = form;
    List<ReadyPhoto> others = photos.toKeep();
    session
        .background()
        .run(
            progress -> new FormDraft(session.book(), start).keep(entry, others),
            done -> done(of, edit, others),
            fault -> failed(of, fault));
  }

  /** Keeps an edit on the calling thread, unless it is on the disk. */
  void keepAtOnce(FormStart start, PieceEntry entry, int edit) {
    if (edit != kept) {
      List<ReadyPhoto> others = photos.toKeep();
      new FormDraft(session.book(), start).keep(entry, others);
      done(form, edit, others);
    }
  }

  /** What was typed while the piece was being saved waits as its mending. */
  void typedSince(SavedForms.Saved saved, PieceEntry now) {
    if (!now.equals(saved.entry())) {
      session.run(
          progress -> {
            new KeepDraft(session.book()).keepMending(now);
            return now;
          },
          done -> {});
    }
  }

  /** A form whose save was refused after another was begun waits as its draft. */
  void refused(SavedForms.Saved form) {
    session.run(
        progress -> new FormDraft(session.book(), form.start()).keep(form.entry(), form.photos()),
        done -> {});
  }

  private void done(int of, int edit, @Nullable List<ReadyPhoto> others) {
    if (of == form) {
      kept = edit;
      photos.kept(others);
    }
  }

  private void failed(int of, Throwable fault) {
    if (of == form) {
      underWay = kept;
    }
    session.unexpected(fault);
  }
}
