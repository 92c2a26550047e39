package walebook.desk.term;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.act.assess.KeepAssessDraft;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.ReadMarkings;
import walebook.act.assess.TagEvidence;
import walebook.desk.common.FormFields;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Lesson;
import walebook.record.Marking;
import walebook.record.SchoolClass;

/** The list of what the course asks for: add, paste, change, order, remove, tag lessons with it. */
public final class CriteriaViewModel {
  private static final String OPEN = "#open";

  private final Session session;
  private final KeepCriteria keep;
  private final TagEvidence tag;
  private final KeepAssessDraft drafts;
  private final ObservableList<Criterion> criteria = FXCollections.observableArrayList();
  private final ObservableList<Lesson> lessons = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable Criterion> open =
      new ReadOnlyObjectWrapper<>(this, "open");
  private final ReadOnlyObjectWrapper<Set<UUID>> tagged =
      new ReadOnlyObjectWrapper<>(this, "tagged", Set.of());
  private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper(this, "edits");
  private final ReadOnlyObjectWrapper<Notice> notice =
      new ReadOnlyObjectWrapper<>(this, "notice", Notice.NONE);
  private final FormFields card =
      new FormFields(this::edited, KeepCriteria.CODE, KeepCriteria.SAYS, KeepCriteria.MARKS);
  private final FormFields list = new FormFields(this::edited, KeepCriteria.LIST);
  private List<CriterionTag> tags = List.of();
  private int kept;
  private int typed;
  private boolean filling;

  private record Read(List<Criterion> criteria, List<Lesson> lessons, List<CriterionTag> tags) {}

  public CriteriaViewModel(Session session) {
    this.session = session;
    this.keep = new KeepCriteria(session.book(), session.clock());
    this.tag = new TagEvidence(session.book());
    this.drafts = new KeepAssessDraft(session.book());
    session.changesProperty().addListener((from, old, now) -> read());
    session
        .schoolClassProperty()
        .addListener(
            (from, old, now) -> {
              keepDraft(old);
              begin();
            });
    begin();
  }

  private void begin() {
    open.set(null);
    filling = true;
    card.put(Map.of());
    list.put(Map.of());
    filling = false;
    read();
    findDraft();
  }

  public ObservableList<Criterion> criteria() {
    return criteria;
  }

  /** The class's lessons, which may be tagged with the open criterion. */
  public ObservableList<Lesson> lessons() {
    return lessons;
  }

  /** The criterion whose card is open, or null while a new one is typed. */
  public ReadOnlyObjectProperty<@Nullable Criterion> openProperty() {
    return open.getReadOnlyProperty();
  }

  /** Keys of the lessons that speak for the open criterion. */
  public ReadOnlyObjectProperty<Set<UUID>> taggedProperty() {
    return tagged.getReadOnlyProperty();
  }

  /** Counts what was typed, so that it is kept as a draft. */
  public ReadOnlyIntegerProperty editsProperty() {
    return edits.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Notice> noticeProperty() {
    return notice.getReadOnlyProperty();
  }

  /** Code and text of the open criterion, or of a new one. */
  public FormFields card() {
    return card;
  }

  /** The field that a whole list is pasted into. */
  public FormFields list() {
    return list;
  }

  /** True while a student is at the screen: criteria can be read, not written. */
  public BooleanExpression lockedProperty() {
    return session.studentProperty().isNotNull();
  }

  /** Says that the tutor is at the screen now. */
  public void tutorIsHere() {
    session.tutorIsHere();
  }

  private <T> @Nullable T unlocked(@Nullable T of) {
    return session.studentProperty().get() == null ? of : null;
  }

  /** Whether a mark counts for what is on the card. */
  public boolean looksAt(Marking marking) {
    return looksAt().contains(marking);
  }

  /** Says whether a mark counts for what is on the card. */
  public void lookAt(Marking marking, boolean counts) {
    Set<Marking> now = EnumSet.noneOf(Marking.class);
    now.addAll(looksAt());
    if (counts ? now.add(marking) : now.remove(marking)) {
      card.field(KeepCriteria.MARKS).text().set(ReadMarkings.typed(now));
    }
  }

  private Set<Marking> looksAt() {
    return ReadMarkings.ticked(card.text(KeepCriteria.MARKS));
  }

  /** How many lessons speak for a criterion. */
  public int lessonsOf(Criterion criterion) {
    return (int)
        tags.stream()
            .filter(each -> each.lessonId() != null)
            .filter(each -> each.criterionId().equals(criterion.id()))
            .count();
  }

  /** Opens a criterion's card; null for a new one. */
  public void open(@Nullable Criterion criterion) {
    open.set(criterion);
    card.put(criterion == null ? Map.of() : typed(criterion));
    showTagged();
    keepDraft();
  }

  private static Map<String, String> typed(Criterion criterion) {
    return Map.of(
        KeepCriteria.CODE,
        criterion.code(),
        KeepCriteria.SAYS,
        criterion.says(),
        KeepCriteria.MARKS,
        ReadMarkings.typed(criterion.looksAt()));
  }

  /** Saves the card: a new criterion, or the changed one. */
  public void save() {
    SchoolClass of = unlocked(session.schoolClassProperty().get());
    if (of == null) {
      return;
    }
    Criterion now = open.get();
    String code = card.text(KeepCriteria.CODE);
    String says = card.text(KeepCriteria.SAYS);
    String marks = card.text(KeepCriteria.MARKS);
    session.run(
        progress ->
            now == null
                ? keep.add(of.id(), code, says, marks)
                : keep.change(now, code, says, marks),
        this::saved);
  }

  private void saved(Answer<Criterion> answer) {
    card.show(answer.problems());
    if (answer.isGood()) {
      open(null);
      session.changed();
      say("desk.term.criteria.saved", answer.value().code());
    }
  }

  /** Adds the pasted list: all of it or none. */
  public void addList() {
    SchoolClass of = unlocked(session.schoolClassProperty().get());
    if (of == null) {
      return;
    }
    String lines = list.text(KeepCriteria.LIST);
    session.run(
        progress -> keep.addList(of.id(), lines, ""),
        answer -> {
          list.show(answer.problems());
          if (answer.isGood()) {
            list.put(Map.of());
            keepDraft();
            session.changed();
            say("desk.term.criteria.added", answer.value().size());
          }
        });
  }

  /** Moves the open criterion up or down. */
  public void move(int places) {
    Criterion now = unlocked(open.get());
    if (now != null) {
      session.run(
          progress -> {
            keep.move(now, places);
            return now;
          },
          moved -> session.changed());
    }
  }

  /** Removes the open criterion with its tags; undo brings it back. */
  public void remove() {
    Criterion now = unlocked(open.get());
    if (now != null) {
      session.run(
          progress -> {
            keep.remove(now.id());
            return now;
          },
          gone -> {
            open(null);
            session.changed();
            say("desk.term.criteria.removed", gone.code());
          });
    }
  }

  /** Says whether a lesson speaks for the open criterion. */
  public void tag(Lesson lesson, boolean speaks) {
    Criterion now = unlocked(open.get());
    if (now != null && tagged.get().contains(lesson.id()) != speaks) {
      session.run(
          progress -> {
            tag.lesson(now.id(), lesson.id(), speaks);
            return lesson;
          },
          done -> session.changed());
    }
  }

  /** Keeps what was typed since it was last kept and is not saved. */
  public void keepDraft() {
    keepDraft(session.schoolClassProperty().get());
  }

  /** Keeps it at once; called before the book is closed. */
  public void rest() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of != null && typed != kept) {
      kept = typed;
      drafts.keep(of.id(), unsaved());
    }
  }

  private void keepDraft(@Nullable SchoolClass of) {
    if (of != null && typed != kept) {
      kept = typed;
      Map<String, String> unsaved = unsaved();
      session.run(
          progress -> {
            drafts.keep(of.id(), unsaved);
            return unsaved;
          },
          done -> {});
    }
  }

  private Map<String, String> unsaved() {
    Map<String, String> typed = new HashMap<>(list.typed());
    Criterion now = open.get();
    if (now == null || !typed(now).equals(card.typed())) {
      typed.putAll(card.typed());
      if (now != null) {
        typed.put(OPEN, now.id().toString());
      }
    }
    return typed;
  }

  private void findDraft() {
    SchoolClass of = session.schoolClassProperty().get();
    if (of != null) {
      session.run(progress -> drafts.find(of.id()), this::takeUp);
    }
  }

  private void takeUp(Map<String, String> typed) {
    if (typed.isEmpty()) {
      return;
    }
    String was = typed.get(OPEN);
    Criterion opened =
        criteria.stream().filter(each -> each.id().toString().equals(was)).findFirst().orElse(null);
    open.set(opened);
    showTagged();
    filling = true;
    card.put(typed);
    list.put(typed);
    filling = false;
    say("desk.term.criteria.draft", "");
  }

  private void edited() {
    typed += filling ? 0 : 1;
    edits.set(edits.get() + 1);
  }

  private void say(String key, Object with) {
    notice.set(new Notice(session.words().say(key, with), null));
  }

  private void showTagged() {
    Criterion now = open.get();
    Set<UUID> found = new HashSet<>();
    for (CriterionTag each : tags) {
      UUID lesson = each.lessonId();
      if (now != null && lesson != null && each.criterionId().equals(now.id())) {
        found.add(lesson);
      }
    }
    tagged.set(Set.copyOf(found));
  }

  private void read() {
    notice.set(Notice.NONE);
    SchoolClass of = session.schoolClassProperty().get();
    if (of == null) {
      show(new Read(List.of(), List.of(), List.of()));
      return;
    }
    session.run(
        progress ->
            new Read(
                session.book().assessments().criteriaOf(of.id()),
                session.book().lessons().of(of.id()),
                session.book().assessments().tagsOf(of.id())),
        this::show);
  }

  private void show(Read read) {
    tags = read.tags();
    criteria.setAll(read.criteria());
    if (!lessons.equals(read.lessons())) {
      lessons.setAll(read.lessons());
    }
    follow(read.criteria());
    showTagged();
  }

  /** The open criterion as it is now; what was typed over it stays. */
  private void follow(List<Criterion> now) {
    Criterion opened = open.get();
    if (opened == null) {
      return;
    }
    Criterion found =
        now.stream().filter(each -> each.id().equals(opened.id())).findFirst().orElse(null);
    boolean untouched = typed(opened).equals(card.typed());
    if (!opened.equals(found)) {
      open.set(found);
      if (untouched) {
        filling = true;
        card.put(found == null ? Map.of() : typed(found));
        filling = false;
      }
    }
  }
}
