package walebook.desk.lessons;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.KeepPackDraft;
import walebook.act.lesson.ReadPacks;
import walebook.desk.common.DayWords;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.lesson.LessonPack;
import walebook.problem.Problem;
import walebook.words.Words;

/** What the place of the lessons shows of the book's own packs. */
final class ShelfView {
  private final Words words;
  private final Look look;
  private final ShelfViewModel model;
  private final ZoneId zone;

  ShelfView(Words words, Look look, ShelfViewModel model, ZoneId zone) {
    this.words = words;
    this.look = look;
    this.model = model;
    this.zone = zone;
  }

  boolean isWhole() {
    return model.writingProperty().get() != null
        || model.taughtProperty().get() != null
        || model.checkedProperty().get() != null;
  }

  /** What takes the whole place now: a pack written, checked or read as taught; or null. */
  @Nullable Node whole() {
    WritePackViewModel writing = model.writingProperty().get();
    LessonPack taught = model.taughtProperty().get();
    ShelfViewModel.Checked checked = model.checkedProperty().get();
    if (writing != null) {
      return new WriteView(words, writing, back());
    } else if (checked != null) {
      return new PlaceFrame(words, words.say("desk.lessons.shelf.checked", checked.of()))
          .context(back())
          .work(checked(checked));
    } else if (taught != null) {
      return new PlaceFrame(
              words, words.say("desk.lessons.shelf.as-taught", taught.about().title()))
          .context(quiet("desk.lessons.shelf.export", () -> model.export(taught)), back())
          .work(new LessonPane(words, look, taught))
          .means(new PreparePane(words, taught));
    }
    return null;
  }

  /** The way in for a pack from outside. */
  Button add() {
    Button add = new Button(words.say("desk.lessons.shelf.add"));
    add.setOnAction(pressed -> model.add());
    return add;
  }

  /** The book's packs and those being written, as far as there are any. */
  List<Node> list(LessonsViewModel lessons) {
    List<Node> parts = new ArrayList<>();
    boolean none = model.shelved().isEmpty() && model.unread().isEmpty();
    if (none && model.drafts().isEmpty()) {
      return parts;
    }
    parts.add(Texts.section(words.say("desk.lessons.shelf.title")));
    parts.add(Texts.text(words.say("desk.lessons.shelf.says"), "soft"));
    model.drafts().forEach(each -> parts.add(draft(each)));
    model.shelved().forEach(each -> parts.add(card(each, lessons)));
    model.unread().forEach(each -> parts.add(unread(each)));
    return parts;
  }

  /** What can be done with a pack beside reading it. */
  List<Node> actions(LessonPack pack) {
    return List.of(
        named("desk.lessons.shelf.copy", pack, () -> model.copy(pack, null)),
        named("desk.lessons.shelf.export", pack, () -> model.export(pack)));
  }

  private Node card(ReadPacks.Found found, LessonsViewModel lessons) {
    LessonPack pack = found.pack();
    LocalDate since =
        found.since() == null ? LocalDate.EPOCH : LocalDate.ofInstant(found.since(), zone);
    VBox card =
        new PackCard(
            words,
            pack,
            lessons,
            named("desk.lessons.shelf.copy", pack, () -> model.copy(pack, found.shelfId())),
            named("desk.lessons.shelf.export", pack, () -> model.export(pack)),
            named("desk.lessons.shelf.remove", pack, () -> model.remove(found)));
    card.getChildren()
        .add(
            2,
            Texts.caption(
                words.say("desk.lessons.shelf.since", DayWords.of(since), found.content())));
    if (found.versions() > 1) {
      card.getChildren()
          .add(3, Texts.caption(words.say("desk.lessons.shelf.versions", pack.about().name())));
    }
    return card;
  }

  private Node draft(KeepPackDraft.Kept kept) {
    String typed = kept.typed().getOrDefault("title", "");
    String title = typed.isEmpty() ? words.say("desk.lessons.shelf.untitled") : typed;
    Button on = new Button(words.say("desk.lessons.shelf.go-on"));
    on.setAccessibleText(words.say("desk.lessons.shelf.go-on-says", title));
    on.setOnAction(pressed -> model.write(kept));
    return cardOf(
        Texts.text(title, "strong"), Texts.caption(words.say("desk.lessons.shelf.draft")), on);
  }

  private Node unread(ReadPacks.Unread found) {
    VBox card =
        cardOf(
            Texts.text(found.pack().title(), "strong"),
            Texts.text(words.say("desk.lessons.shelf.unread")),
            new ProblemsList(words, found.problems()));
    Button remove = quiet("desk.lessons.shelf.remove", () -> model.remove(found));
    card.getChildren().add(remove);
    return card;
  }

  private Node checked(ShelfViewModel.Checked checked) {
    boolean refused = checked.problems().stream().anyMatch(Problem::refuses);
    String says = refused ? "desk.lessons.shelf.refused" : "desk.lessons.shelf.remarks";
    VBox all =
        new VBox(
            16,
            Texts.text(words.say(says, checked.problems().size())),
            new ProblemsList(words, checked.problems()));
    Path at = checked.at();
    if (at != null && refused) {
      Button again = new Button(words.say("desk.lessons.shelf.again"));
      again.setOnAction(pressed -> model.add(at));
      all.getChildren().add(again);
    }
    return all;
  }

  private static VBox cardOf(Node... nodes) {
    VBox card = new VBox(8, nodes);
    card.getStyleClass().add("card");
    return card;
  }

  private Button back() {
    return quiet("desk.lessons.back", model::back);
  }

  /** A button that says what it does, and to those who listen also to which pack. */
  private Button named(String says, LessonPack pack, Runnable does) {
    Button button = quiet(says, does);
    button.setAccessibleText(
        words.say("desk.lessons.shelf.of", words.say(says), pack.about().title()));
    return button;
  }

  private Button quiet(String says, Runnable does) {
    Button button = new Button(words.say(says));
    button.getStyleClass().add("quiet");
    button.setOnAction(pressed -> does.run());
    return button;
  }
}
