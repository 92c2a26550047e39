package walebook.desk.common;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Drawing;
import walebook.drawing.Palette;
import walebook.drawing.Picture;
import walebook.words.Words;

/**
 * Shows a {@link Drawing} at the width it is given; colours and text size follow the style sheets.
 * What lies outside the window is painted when it is scrolled to: a place may hold many pictures,
 * and painting them all at once would hold up its frames.
 */
public final class PicturePane extends Region {
  private static final double BODY = 15;
  private static final int WIDTHS = 2;
  private static final StyleablePropertyFactory<PicturePane> FACTORY =
      new StyleablePropertyFactory<>(Region.getClassCssMetaData());

  private final StyleableProperty<String> palette;
  private final StyleableProperty<Number> em;
  private final Canvas canvas = new Canvas();
  private final Words words;
  private @Nullable Drawing drawing;
  private final Deque<Picture> kept = new ArrayDeque<>(WIDTHS);
  private double drawnWidth = -1;
  private final ChangeListener<Object> moved = (from, was, now) -> paintInView();
  private @Nullable Scene watched;

  public PicturePane(Words words) {
    this.words = words;
    palette =
        FACTORY.createStyleableStringProperty(
            this, "palette", "-wb-palette", pane -> pane.palette, Palette.LIGHT.name());
    em = FACTORY.createStyleableNumberProperty(this, "em", "-wb-em", pane -> pane.em, BODY);
    getStyleClass().add("picture-pane");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    canvas.setManaged(false);
    getChildren().add(canvas);
    observe();
    sceneProperty().addListener((from, was, now) -> movedToOther());
    setOnContextMenuRequested(
        event -> {
          MenuItem copy = new MenuItem(words.say("desk.common.copy-picture"));
          copy.setOnAction(chosen -> copy());
          new ContextMenu(copy).show(this, event.getScreenX(), event.getScreenY());
        });
  }

  public PicturePane(Words words, Drawing drawing) {
    this(words);
    show(drawing);
  }

  /** Shows another drawing, or none. */
  public void show(@Nullable Drawing next) {
    if (next != null && next.equals(drawing)) {
      return;
    }
    drawing = next;
    redraw();
  }

  /** The picture as an image at twice its size, on the card's colour. */
  public WritableImage image() {
    Drawing now = drawing;
    double wide = now == null ? 1 : Math.max(now.leastWidth(), getWidth() / scale());
    Picture picture = now == null ? null : now.at(wide, words);
    return PictureImage.of(picture, palette(), 2);
  }

  /** Puts the picture on the clipboard. */
  public void copy() {
    ClipboardContent content = new ClipboardContent();
    content.putImage(image());
    Clipboard.getSystemClipboard().setContent(content);
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
    return FACTORY.getCssMetaData();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    Drawing now = drawing;
    return now == null ? 0 : now.leastWidth() * scale();
  }

  @Override
  protected double computePrefWidth(double height) {
    Drawing now = drawing;
    return now == null ? 0 : now.ownWidth() * scale();
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    Drawing now = drawing;
    if (now == null) {
      return 0;
    }
    double wide = width > 0 ? width : computePrefWidth(-1);
    return Math.ceil(picture(now, wide / scale()).height() * scale());
  }

  @Override
  protected void layoutChildren() {
    if (Math.abs(getWidth() - drawnWidth) > 0.5) {
      paintInView();
    }
  }

  private void observe() {
    // The styleable properties are observable; the factory's type only says styleable.
    if (palette instanceof javafx.beans.value.ObservableValue<?> value) {
      value.addListener((from, old, now) -> redraw());
    }
    if (em instanceof javafx.beans.value.ObservableValue<?> value) {
      value.addListener((from, old, now) -> redraw());
    }
  }

  private void redraw() {
    drawnWidth = -1;
    kept.clear();
    if (drawing == null) {
      setAccessibleText("");
    }
    requestLayout();
  }

  /** Paints now where some of it can be seen, else once it can. */
  private void paintInView() {
    Scene scene = getScene();
    if (scene != null && isWithin(scene)) {
      watch(null);
      paint();
    } else if (scene != watched) {
      watch(scene);
    }
  }

  /** Nothing is kept by a window that it has left; in another one it is laid out again. */
  private void movedToOther() {
    watch(null);
    if (drawnWidth < 0) {
      requestLayout();
    }
  }

  private boolean isWithin(Scene scene) {
    Bounds at = localToScene(getLayoutBounds());
    boolean sized = scene.getHeight() > 0;
    return !sized || (at.getMaxY() >= 0 && at.getMinY() <= scene.getHeight());
  }

  private void watch(@Nullable Scene next) {
    Scene last = watched;
    if (last != null) {
      localToSceneTransformProperty().removeListener(moved);
      last.heightProperty().removeListener(moved);
    }
    watched = next;
    if (next != null) {
      localToSceneTransformProperty().addListener(moved);
      next.heightProperty().addListener(moved);
    }
  }

  private void paint() {
    drawnWidth = getWidth();
    Drawing now = drawing;
    if (now == null || getWidth() <= 0) {
      canvas.setWidth(0);
      canvas.setHeight(0);
      return;
    }
    double scale = scale();
    PictureImage.paint(canvas, picture(now, getWidth() / scale), palette(), scale);
  }

  /** Layout asks for the same two widths over and over: with a bar beside it, and without. */
  private Picture picture(Drawing now, double width) {
    double taken = now.takenWidth(width);
    for (Picture each : kept) {
      if (each.width() == taken) {
        return each;
      }
    }
    Picture fresh = now.at(width, words);
    if (kept.size() == WIDTHS) {
      kept.removeFirst();
    }
    kept.addLast(fresh);
    setAccessibleText(words.say(fresh.says()));
    return fresh;
  }

  private double scale() {
    double now = em.getValue().doubleValue();
    return now > 0 ? now / BODY : 1;
  }

  private Palette palette() {
    return Palette.DARK.name().equals(palette.getValue()) ? Palette.DARK : Palette.LIGHT;
  }
}
