package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadLessons;
import walebook.act.print.PrintPaper;
import walebook.desk.common.NotesPane;
import walebook.desk.common.NotesViewModel;
import walebook.desk.common.Notice;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.PrintPane;
import walebook.desk.common.PrintViewModel;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.lesson.LessonPack;
import walebook.record.Lesson;
import walebook.record.Note;
import walebook.words.Words;

/** The place of the lessons: packs and lessons taken up, a pack to read, its plan. */
public final class LessonsView extends BorderPane {
  private final Words words;
  private final Look look;
  private final LessonsViewModel model;
  private final PlanAgainViewModel planAgain;
  private final ShelfViewModel shelf;
  private final ShelfView shelfView;
  private final NotesViewModel notes;
  private final NotesPane notesPane;
  private @Nullable KitViewModel kept;

  /** A view over a session; the look dresses the board that is shown large. */
  public LessonsView(Session session, Look look) {
    this.words = session.words();
    this.look = look;
    this.model = new LessonsViewModel(session);
    this.notes = new NotesViewModel(session);
    this.notesPane = new NotesPane(words, notes);
    this.planAgain = new PlanAgainViewModel(session);
    model.partProperty().addListener((from, old, now) -> planAgain.forget());
    this.shelf = new ShelfViewModel(session);
    this.shelfView = new ShelfView(words, look, shelf, session.clock().getZone());
    shelf.checkedProperty().addListener((from, old, now) -> show());
    shelf.taughtProperty().addListener((from, old, now) -> show());
    shelf.writingProperty().addListener((from, old, now) -> show());
    shelf.shelved().addListener((Observable change) -> listChanged());
    shelf.unread().addListener((Observable change) -> listChanged());
    shelf.drafts().addListener((Observable change) -> listChanged());
    model.partProperty().addListener((from, old, now) -> show());
    model.planProperty().addListener((from, old, now) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    model.taken().addListener((Observable change) -> listChanged());
    session.schoolClassProperty().addListener((from, old, now) -> listChanged());
    show();
  }

  /** Keeps what is being typed; called before the book is closed. */
  public void rest() {
    shelf.rest();
    notes.rest();
  }

  private void listChanged() {
    if (shelfView.isWhole()) {
      return;
    }
    if (model.partProperty().get() == LessonsViewModel.Part.LIST) {
      show();
    }
  }

  private void show() {
    Node own = shelfView.whole();
    if (own != null) {
      setCenter(own);
      return;
    }
    LessonPack pack = model.packProperty().get();
    ReadLessons.ClassPlan plan = model.planProperty().get();
    LessonsViewModel.Part part = model.partProperty().get();
    if (part == LessonsViewModel.Part.READ && pack != null) {
      setCenter(read(pack));
    } else if (part == LessonsViewModel.Part.TAKE_UP && pack != null) {
      setCenter(takeUp(pack));
    } else if (part == LessonsViewModel.Part.KIT && pack != null) {
      setCenter(kit(pack));
    } else if (part == LessonsViewModel.Part.PLAN && plan != null) {
      setCenter(plan(plan));
    } else {
      setCenter(list());
    }
  }

  private Node list() {
    PlaceFrame frame = new PlaceFrame(words, words.say("desk.lessons.title"));
    if (!model.loadedProperty().get()) {
      return frame.beingRead();
    }
    List<Node> parts = new ArrayList<>();
    if (model.session().schoolClassProperty().get() != null) {
      parts.add(Texts.section(words.say("desk.lessons.taken")));
      parts.add(
          model.taken().isEmpty()
              ? Texts.text(words.say("desk.lessons.none-taken"), "soft")
              : new TakenTable(words, model));
    }
    parts.addAll(shelfView.list(model));
    parts.add(Texts.section(words.say("desk.lessons.packs")));
    model
        .packs()
        .forEach(
            each ->
                parts.add(
                    new PackCard(
                        words, each, model, shelfView.actions(each).toArray(Node[]::new))));
    frame.context(shelfView.add());
    frame.notice().noticeProperty().bind(shelf.noticeProperty());
    return frame.work(parts.toArray(Node[]::new));
  }

  private Node read(LessonPack pack) {
    PlaceFrame frame = new PlaceFrame(words, pack.about().title());
    Button take = new Button();
    boolean none = model.session().schoolClassProperty().get() == null;
    take.setText(words.say(none ? "desk.lessons.start-class" : "desk.lessons.take-up"));
    take.setOnAction(
        pressed -> {
          if (none) {
            model.startClass();
          } else {
            model.takeUp();
          }
        });
    Button kit = new Button(words.say("desk.lessons.kit"));
    kit.setOnAction(pressed -> model.kit());
    return frame
        .context(back())
        .work(new LessonPane(words, look, pack))
        .means(new PreparePane(words, pack))
        .lesser(kit)
        .lesser(TeachButton.pack(model.session(), look, pack))
        .primary(take);
  }

  private Node kit(LessonPack pack) {
    KitViewModel before = kept;
    Lesson lesson = model.kitLesson();
    KitViewModel kit =
        before != null && before.isOf(pack, lesson)
            ? before
            : new KitViewModel(model.session(), pack, lesson);
    kept = kit;
    ScrapsViewModel scraps = new ScrapsViewModel(model.session(), kit);
    Button work = new Button(words.say("desk.lessons.kit.go"));
    work.setOnAction(pressed -> kit.workOut());
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.lessons.kit.title", pack.about().title()))
            .context(back())
            .work(new KitPane(words, kit, scraps, model.cloths()))
            .primary(work);
    frame.notice().noticeProperty().bind(kit.saysProperty().map(now -> new Notice(now, null)));
    return frame;
  }

  private Node takeUp(LessonPack pack) {
    TakeUpViewModel form = new TakeUpViewModel(model.session(), pack, model::taken);
    Button take = new Button(words.say("desk.lessons.take-up.go"));
    take.setOnAction(pressed -> form.takeUp());
    return new PlaceFrame(words, words.say("desk.lessons.take-up.title", pack.about().title()))
        .context(back())
        .work(new TakeUpPane(words, form, model.cloths()))
        .primary(take);
  }

  private Node plan(ReadLessons.ClassPlan plan) {
    notes.open(Note.About.LESSON, plan.lesson().id());
    PlaceFrame frame =
        new PlaceFrame(words, words.say("desk.lessons.plan.title", plan.lesson().title()))
            .lesser(kitOf(plan))
            .lesser(TeachButton.lesson(model.session(), look, plan.lesson(), planAgain::say))
            .context(asTaught(plan), back())
            .work(new PlanPane(words, plan, model.session().tables()), notesPane)
            .means(print(plan));
    if (plan.isSewn()) {
      frame.lesser(typeIn(plan));
    }
    frame.notice().noticeProperty().bind(planAgain.noticeProperty());
    Button again = new Button(words.say("desk.lessons.plan.again"));
    again.setOnAction(pressed -> planAgain.again(plan.lesson()));
    return frame.lesser(again);
  }

  private Button kitOf(ReadLessons.ClassPlan plan) {
    Button kit = new Button(words.say("desk.lessons.kit"));
    kit.setOnAction(pressed -> model.kit(plan.lesson()));
    return kit;
  }

  private Button typeIn(ReadLessons.ClassPlan plan) {
    Button typeIn = new Button(words.say("desk.lessons.type-in"));
    typeIn.setOnAction(pressed -> model.typeIn(plan.lesson().id()));
    return typeIn;
  }

  private Button asTaught(ReadLessons.ClassPlan plan) {
    Button read = new Button(words.say("desk.lessons.read-as-taught"));
    read.getStyleClass().add("quiet");
    read.setOnAction(pressed -> shelf.readTaught(plan.lesson()));
    return read;
  }

  private Node print(ReadLessons.ClassPlan plan) {
    Session session = model.session();
    List<PrintPaper.Kind> kinds = new ArrayList<>();
    if (plan.isSewn()) {
      kinds.addAll(List.of(PrintPaper.Kind.LABELS, PrintPaper.Kind.CARDS, PrintPaper.Kind.GRID));
    }
    if (!plan.parts().isEmpty()) {
      kinds.add(PrintPaper.Kind.PLAN);
    }
    kinds.addAll(List.of(PrintPaper.Kind.HAND_OUT, PrintPaper.Kind.KIT));
    PrintViewModel print = new PrintViewModel(session, plan.lesson().id(), kinds);
    PrintPane pane = new PrintPane(words, print, session.namesHiddenProperty().get());
    return plan.isSewn()
        ? pane
        : new VBox(12, pane, Texts.caption(words.say("desk.lessons.plan.no-labels")));
  }

  private Button back() {
    Button back = new Button(words.say("desk.lessons.back"));
    back.getStyleClass().add("quiet");
    back.setOnAction(pressed -> model.back());
    return back;
  }
}
