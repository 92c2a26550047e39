package walebook.desk.term;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.compare.RosterOrder;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.AssessedPiece;
import walebook.compare.assessed.Coverage;
import walebook.compare.assessed.Standing;
import walebook.compare.assessed.TimeLeft;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.record.Criterion;
import walebook.record.SchoolClass;
import walebook.record.Student;

/** What an assessor asks about the class: what is missing for whom, and what is covered. */
public final class AssessViewModel {
  private static final String PIECES = "pieces";

  private final Session session;
  private final CriteriaViewModel criteria;
  private final ObservableList<Coverage.Gap> gaps = FXCollections.observableArrayList();
  private final ObjectProperty<Part> part = new SimpleObjectProperty<>(this, "part", Part.MISSING);
  private final ReadOnlyObjectWrapper<@Nullable Student> only =
      new ReadOnlyObjectWrapper<>(this, "only");
  private final ReadOnlyObjectWrapper<Coverage> coverage =
      new ReadOnlyObjectWrapper<>(this, "coverage", new Coverage(List.of(), List.of()));
  private final ReadOnlyStringWrapper time = new ReadOnlyStringWrapper(this, "time", "");
  private final ReadOnlyBooleanWrapper warning = new ReadOnlyBooleanWrapper(this, "warning");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private AssessedClass assessed = AssessedClass.NONE;

  /** What is shown. */
  public enum Part {
    MISSING,
    COVERAGE,
    CRITERIA
  }

  public AssessViewModel(Session session) {
    this.session = session;
    this.criteria = new CriteriaViewModel(session);
    criteria.noticeProperty().addListener((from, old, now) -> notice.set(now));
    session
        .changesProperty()
        .addListener(
            (from, old, now) -> {
              notice.set(Notice.NONE);
              read();
            });
    session.namesHiddenProperty().addListener((from, old, now) -> show(assessed));
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              only.set(null);
              read();
            });
    read();
  }

  /** The list of what the course asks for. */
  public CriteriaViewModel criteria() {
    return criteria;
  }

  public ObjectProperty<Part> partProperty() {
    return part;
  }

  /** What is missing, of everybody or of {@link #onlyProperty}. */
  public ObservableList<Coverage.Gap> gaps() {
    return gaps;
  }

  /** Whose gaps alone are listed, or null for everybody's. */
  public ReadOnlyObjectProperty<@Nullable Student> onlyProperty() {
    return only.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Coverage> coverageProperty() {
    return coverage.getReadOnlyProperty();
  }

  /** How much is missing and how much of the term is left. */
  public ReadOnlyStringProperty timeProperty() {
    return time.getReadOnlyProperty();
  }

  /** True from two weeks before the end of the term on, while anything is missing. */
  public ReadOnlyBooleanProperty warningProperty() {
    return warning.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** A student as the window calls them. */
  public String called(Student student) {
    return session.namesHiddenProperty().get() ? student.alias() : student.name();
  }

  /** Lists what is missing for one student, or for everybody. */
  public void only(@Nullable Student student) {
    only.set(student);
    part.set(Part.MISSING);
    show(assessed);
  }

  /** Opens the piece that comes nearest to closing a gap, or says that there is none. */
  public void open(Coverage.Gap gap) {
    UUID student = gap.student().id();
    UUID criterion = gap.criterion().id();
    AssessedPiece piece =
        assessed.pieces().stream()
            .filter(each -> each.studentId().equals(student))
            .filter(each -> each.criteria().contains(criterion))
            .max(Comparator.comparing(AssessViewModel::nearness))
            .orElse(null);
    if (piece == null) {
      String sentence =
          session
              .words()
              .say("desk.term.assess.no-piece", called(gap.student()), gap.criterion().code());
      notice.set(new Notice(sentence, null));
    } else {
      session.wish(new Wish(PIECES, Wish.What.LOOK_OVER, piece.pieceId()));
    }
  }

  /** A check begun or made by the student first, then any that is to come, then a failed one. */
  private static int nearness(AssessedPiece piece) {
    if (piece.standing() == Standing.UNCHECKED) {
      return piece.tutor() != null || piece.self() != null ? 2 : 1;
    }
    return 0;
  }

  private void read() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      show(AssessedClass.NONE);
      return;
    }
    session.run(progress -> AssessedClass.of(session.book(), of.id()), this::show);
  }

  private void show(AssessedClass found) {
    boolean first = assessed.equals(AssessedClass.NONE);
    assessed = found;
    Coverage now = found.coverage();
    // By name the list would tell who stands behind a code.
    List<Coverage.Row> rows =
        session.namesHiddenProperty().get()
            ? now.rows().stream()
                .sorted(Comparator.comparing(Coverage.Row::student, RosterOrder.of(false)))
                .toList()
            : now.rows();
    Coverage shown = new Coverage(now.criteria(), rows);
    coverage.set(shown);
    Student one = only.get();
    List<Coverage.Gap> missing = shown.missing();
    gaps.setAll(
        missing.stream()
            .filter(gap -> one == null || gap.student().id().equals(one.id()))
            .toList());
    TimeLeft left = found.timeLeft(LocalDate.now(session.clock()));
    List<Criterion> asked = found.criteria();
    time.set(asked.isEmpty() ? "" : session.words().say(left.says(missing.size())));
    warning.set(left.isWarning() && !missing.isEmpty());
    if (first && asked.isEmpty()) {
      part.set(Part.CRITERIA);
    }
  }
}
