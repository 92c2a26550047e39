package walebook.desk.common;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;

/**
 * How every place sits: title and context above, the work in the middle, what it means at the right
 * (below the work when there is little room), the primary action at the foot.
 */
public final class PlaceFrame extends BorderPane {
  private static final double SIDE_EMS = 21;
  private static final double NARROW_EMS = 52;
  private static final double HEAD_GAPS_EMS = 4;

  /** Between things beside each other, px. */
  private static final double GAP = 8;

  /** So many buttons leave the notice room beside them. */
  private static final int BESIDE_NOTICE = 2;

  private final Words words;
  private final List<Node> context = new ArrayList<>();
  private final VBox work = new WrappedColumn();
  private final VBox side = new VBox();
  private final VBox sideContent = new WrappedColumn();
  private final NoticeLine notice;
  private final List<Button> actions = new ArrayList<>();
  private final BorderPane head = new BorderPane();
  private final VBox headBox = new VBox(GAP);
  private final VBox foot = new VBox(8);
  private final Label body = new Label();
  private final BooleanProperty sideOpen = new SimpleBooleanProperty(this, "sideOpen", true);
  private final ScrollPane workScroll = scroll(work);
  private final ScrollPane sideScroll = scroll(sideContent);
  private @Nullable Node means;
  private @Nullable Node running;
  private @Nullable Node parts;
  private final Label name;
  private boolean narrow;
  private boolean headTight;

  public PlaceFrame(Words words, String title) {
    this.words = words;
    notice = new NoticeLine(words);
    getStyleClass().add("place-frame");
    work.getStyleClass().add("place-work");
    side.getStyleClass().add("place-side");
    sideContent.getStyleClass().add("side-content");
    name = Texts.text(title, "place-title");
    // The padding stands outside: a BorderPane forgets its own when it measures wrapped text.
    headBox.getChildren().add(head);
    headBox.getStyleClass().add("place-head");
    head.setCenter(name);
    BorderPane.setAlignment(name, Pos.CENTER_LEFT);
    foot.getStyleClass().add("place-foot");
    VBox.setVgrow(sideScroll, Priority.ALWAYS);
    // In the order of reading, which is that of the Tab key.
    BorderPane middle = new BorderPane();
    middle.setTop(headBox);
    middle.setCenter(workScroll);
    middle.setBottom(foot);
    // As the frame itself: what is wider than the place would push it over the list of places.
    middle.setMinWidth(0);
    setCenter(middle);
    PageWheel.on(workScroll);
    RowInSight.on(workScroll);
    clipped();
    body.setManaged(false);
    getChildren().add(body);
    body.fontProperty().addListener((from, old, now) -> requestLayout());
    footArranged();
    footShown();
    notice.noticeProperty().addListener((from, old, now) -> footShown());
    sideOpen.addListener((from, old, now) -> arrange());
    arrange();
  }

  /** Who am I, which class: at the right of the title. */
  public PlaceFrame context(Node... nodes) {
    context.clear();
    context.addAll(List.of(nodes));
    arrange();
    return this;
  }

  /** The work itself, one under the other; what may grow says so by its own vgrow. */
  public PlaceFrame work(Node... nodes) {
    work.getChildren().setAll(nodes);
    arrange();
    return this;
  }

  /**
   * The parts of the place to choose from. They stay above the work while it is scrolled; where
   * letters leave little room they go with it.
   */
  public PlaceFrame parts(Node choose) {
    parts = choose;
    arrange();
    return this;
  }

  /** Nothing is known yet of what will stand here. */
  public PlaceFrame beingRead() {
    return work(new BeingRead(words));
  }

  /** What the work means; follows it and folds away. */
  public PlaceFrame means(Node node) {
    means = node;
    arrange();
    return this;
  }

  /** The one primary action of the place. */
  public PlaceFrame primary(Button button) {
    button.getStyleClass().add("primary");
    actions.removeIf(other -> other.getStyleClass().contains("primary"));
    addAction(actions.size(), button);
    footArranged();
    footShown();
    return this;
  }

  /** A lesser action, left of the primary one. */
  public PlaceFrame lesser(Button button) {
    addAction(0, button);
    footArranged();
    footShown();
    return this;
  }

  /** What is going on now, above the line at the foot, where it stays in sight. */
  public PlaceFrame running(Node node) {
    running = node;
    node.managedProperty().bind(node.visibleProperty());
    footArranged();
    return this;
  }

  /** Says a sentence in the line at the foot. */
  public void say(String sentence) {
    notice.noticeProperty().set(new Notice(sentence, null));
  }

  /** What a button does is never cut short: a long notice wraps instead. */
  private void addAction(int place, Button button) {
    button.setMinWidth(Region.USE_PREF_SIZE);
    actions.add(place, button);
  }

  /** The line at the foot. */
  public NoticeLine notice() {
    return notice;
  }

  /** Begins at the top, when something else is shown than before. */
  public void toTop() {
    workScroll.setVvalue(0);
    sideScroll.setVvalue(0);
  }

  public BooleanProperty sideOpenProperty() {
    return sideOpen;
  }

  /**
   * It takes whatever room there is. Title and context would ask for theirs beside each other, be
   * given it beyond the window's edge, and never be found to have too little.
   */
  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computeMinHeight(double width) {
    return 0;
  }

  @Override
  protected void layoutChildren() {
    boolean now = getWidth() < NARROW_EMS * body.getFont().getSize();
    boolean tight = isHeadTight();
    if (now != narrow || tight != headTight) {
      headTight = tight;
      narrow = now;
      arrange();
      footArranged();
    }
    super.layoutChildren();
  }

  /** True when title and context have no room beside each other. */
  private boolean isHeadTight() {
    double beside = getRight() == null ? 0 : side.prefWidth(-1);
    double gaps = HEAD_GAPS_EMS * body.getFont().getSize();
    double said = context.stream().mapToDouble(each -> each.prefWidth(-1) + GAP).sum();
    return name.prefWidth(-1) + said + gaps > getWidth() - beside;
  }

  /** What finds no room even so is not drawn over the list of places. */
  private void clipped() {
    Rectangle area = new Rectangle();
    area.widthProperty().bind(widthProperty());
    area.heightProperty().bind(heightProperty());
    setClip(area);
  }

  private void arrangeParts() {
    Node choose = parts;
    if (choose != null) {
      headBox.getChildren().remove(choose);
      work.getChildren().remove(choose);
      if (narrow) {
        work.getChildren().add(0, choose);
      } else {
        headBox.getChildren().add(choose);
      }
    }
  }

  private void arrange() {
    arrangeParts();
    Node now = means;
    sideContent.getChildren().clear();
    sideScroll.setContent(null);
    side.getChildren().clear();
    work.getChildren().remove(side);
    setRight(null);
    head.setRight(null);
    head.setBottom(null);
    if (narrow || headTight) {
      head.setBottom(contextBelow());
    } else {
      HBox beside = new HBox(GAP);
      beside.setAlignment(Pos.CENTER_RIGHT);
      context.forEach(PlaceFrame::asWideAsItIs);
      beside.getChildren().setAll(context);
      head.setRight(beside);
    }
    if (now == null) {
      return;
    }
    side.getStyleClass().setAll("place-side");
    if (sideOpen.get()) {
      sideContent.getChildren().setAll(now);
    }
    String title = words.say(sideOpen.get() ? "desk.common.means-fold" : "desk.common.means-open");
    Button fold = new Button(title);
    fold.getStyleClass().add("fold-button");
    fold.setOnAction(pressed -> sideOpen.set(!sideOpen.get()));
    HBox head = new HBox(fold);
    head.getStyleClass().add("side-head");
    side.getChildren().add(head);
    if (narrow) {
      side.getStyleClass().add("below");
      side.setStyle("");
      side.getChildren().add(sideContent);
      work.getChildren().add(side);
    } else {
      sideScroll.setContent(sideContent);
      if (sideOpen.get()) {
        side.getChildren().add(sideScroll);
        side.setStyle("-fx-pref-width: " + SIDE_EMS + "em;");
      } else {
        side.setStyle("");
      }
      setRight(side);
    }
  }

  private static void asWideAsItIs(Node each) {
    if (each instanceof Label label && label.maxWidthProperty().isBound()) {
      label.maxWidthProperty().unbind();
      label.setMaxWidth(USE_COMPUTED_SIZE);
    }
  }

  /** Under the title, going on below where one line is too short; nothing is cut. */
  private FlowPane contextBelow() {
    FlowPane below = new FlowPane(GAP, GAP / 2);
    // Left to itself it is never narrower than its longest text, which then has no need to wrap.
    below.setMinWidth(0);
    below.setRowValignment(VPos.CENTER);
    for (Node each : context) {
      if (each instanceof Button button) {
        button.setMinWidth(USE_PREF_SIZE);
      } else if (each instanceof Label label) {
        label.setWrapText(true);
        label.maxWidthProperty().bind(below.widthProperty());
      }
    }
    below.getChildren().setAll(context);
    return below;
  }

  /** Where there is little room, or many buttons, the notice stands above them, and they wrap. */
  private void footArranged() {
    if (narrow || actions.size() > BESIDE_NOTICE) {
      FlowPane wrapping = new FlowPane(8, 8);
      wrapping.setAlignment(Pos.CENTER_RIGHT);
      wrapping.getChildren().setAll(actions);
      foot.getChildren().setAll(notice, wrapping);
    } else {
      HBox line = new HBox(8, notice, space());
      line.getChildren().addAll(actions);
      line.setAlignment(Pos.CENTER_LEFT);
      foot.getChildren().setAll(line);
    }
    Node now = running;
    if (now != null) {
      foot.getChildren().add(0, now);
    }
  }

  private void footShown() {
    notice.setManaged(!notice.noticeProperty().get().says().isEmpty());
    notice.setVisible(notice.isManaged());
    boolean any = !actions.isEmpty() || !notice.noticeProperty().get().says().isEmpty();
    foot.setVisible(any);
    foot.setManaged(any);
  }

  private static Region space() {
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    return space;
  }

  private static ScrollPane scroll(VBox content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.skinProperty().addListener((from, old, now) -> drawnAsItChanges(scroll));
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  /**
   * A scroll pane keeps what it shows as one image, which is drawn anew as a whole whenever the
   * least of it changes. Without that, only what changed is drawn.
   */
  private static void drawnAsItChanges(ScrollPane scroll) {
    Node viewport = scroll.lookup(".viewport");
    if (viewport != null) {
      viewport.setCache(false);
    }
  }
}
