package walebook.desk.shell;

import java.util.UUID;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.FindByCode;
import walebook.book.Book;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.problem.Answer;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** The field in which a piece's code is typed or scanned, from anywhere in the window. */
public final class FindViewModel {
  private static final String PIECES = "pieces";

  private final Session session;
  private final FindByCode act;
  private final StringProperty text = new SimpleStringProperty(this, "text", "");
  private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");

  /** What to open, and who and which class belong to a piece that is to be logged. */
  private record Opened(Wish wish, @Nullable SchoolClass inClass, @Nullable Student student) {}

  public FindViewModel(Session session) {
    this.session = session;
    this.act = new FindByCode(session.book());
    text.addListener((from, old, now) -> says.set(""));
  }

  public StringProperty textProperty() {
    return text;
  }

  /** Why nothing was found, or who the form is for; empty while there is nothing to say. */
  public ReadOnlyStringProperty saysProperty() {
    return says.getReadOnlyProperty();
  }

  /**
   * Opens the piece: one that was sewn is shown; one that is planned opens its log form, in the
   * name of the student whose piece it is.
   */
  public void find() {
    String typed = text.get();
    session.run(progress -> look(typed), this::answered);
  }

  private Answer<Opened> look(String typed) {
    return act.find(typed).map(this::opened);
  }

  private Opened opened(FindByCode.Found found) {
    Book book = session.book();
    if (found instanceof FindByCode.Found.Planned planned) {
      UUID studentId = planned.piece().studentId();
      return new Opened(
          new Wish(PIECES, Wish.What.LOG_PLANNED, planned.piece().id()),
          book.classes().find(planned.classId()),
          book.students().find(studentId));
    }
    UUID id = ((FindByCode.Found.Sewn) found).piece().id();
    return new Opened(new Wish(PIECES, Wish.What.OPEN, id), null, null);
  }

  private void answered(Answer<Opened> answer) {
    if (!answer.isGood()) {
      says.set(session.words().sayAtField(answer.problems().get(0)));
      return;
    }
    text.set("");
    Opened opened = answer.value();
    SchoolClass inClass = opened.inClass();
    if (inClass != null && !inClass.equals(session.schoolClassProperty().get())) {
      session.schoolClassProperty().set(inClass);
    }
    if (opened.student() != null) {
      session.studentProperty().set(opened.student());
    }
    session.wish(opened.wish());
  }
}
