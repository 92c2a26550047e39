package walebook.desk.term;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Consumer;
import walebook.act.classroom.StartClass;
import walebook.desk.common.FormFields;
import walebook.desk.common.Session;
import walebook.record.SchoolClass;

/** The form that begins a class. */
public final class StartClassViewModel {
  private static final int WEEKS = 12;

  private final Session session;
  private final StartClass act;
  private final Consumer<SchoolClass> begun;
  private final FormFields fields =
      new FormFields(
          () -> {},
          "class-name",
          "meets",
          "term-name",
          "term-starts",
          "term-ends",
          "tutor",
          "students");
  private boolean starting;

  /**
   * A form.
   *
   * @param begun told of the class once it is on the disk
   */
  public StartClassViewModel(Session session, Consumer<SchoolClass> begun) {
    this.session = session;
    this.begun = begun;
    this.act = new StartClass(session.book(), session.clock());
    LocalDate today = LocalDate.now(session.clock());
    fields.put(
        Map.of("term-starts", today.toString(), "term-ends", today.plusWeeks(WEEKS).toString()));
  }

  public FormFields fields() {
    return fields;
  }

  /** Begins it; pressed again meanwhile, it begins no second one. */
  public void start() {
    if (starting) {
      return;
    }
    starting = true;
    StartClass.Typed typed =
        new StartClass.Typed(
            fields.text("class-name"),
            fields.text("meets"),
            fields.text("term-name"),
            fields.text("term-starts"),
            fields.text("term-ends"),
            fields.text("tutor"),
            fields.text("students"));
    session
        .background()
        .run(
            progress -> act.start(typed),
            answer -> {
              starting = false;
              fields.show(answer.problems());
              if (answer.isGood()) {
                begun.accept(answer.value());
              }
            },
            fault -> {
              starting = false;
              session.unexpected(fault);
            });
  }
}
