package walebook.desk.common;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import walebook.desk.look.Look;
import walebook.words.Words;

/** The one window that an unexpected fault reaches; nothing in it blocks the work behind it. */
public final class ErrorWindow {
  private final Words words;
  private final Look look;

  public ErrorWindow(Words words, Look look) {
    this.words = words;
    this.look = look;
  }

  /** Shows a fault in a window of its own. */
  public void show(FaultReport report) {
    Stage stage = new Stage();
    Scene scene = new Scene(content(report, stage::close), 640, 420);
    look.dress(scene);
    stage.setTitle(words.say("desk.common.fault.title"));
    stage.setScene(scene);
    stage.show();
  }

  /** What stands in the window. */
  public Region content(FaultReport report, Runnable close) {
    TextArea details = new TextArea(report.details());
    details.setEditable(false);
    details.setAccessibleText(words.say("desk.common.fault.details"));
    VBox.setVgrow(details, Priority.ALWAYS);
    Button copy = new Button(words.say("desk.common.fault.copy"));
    copy.setOnAction(
        pressed -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(report.code() + "\n" + report.details());
          Clipboard.getSystemClipboard().setContent(content);
        });
    Button done = new Button(words.say("desk.common.fault.close"));
    done.getStyleClass().add("primary");
    done.setCancelButton(true);
    done.setOnAction(pressed -> close.run());
    HBox space = new HBox();
    HBox.setHgrow(space, Priority.ALWAYS);
    VBox content =
        new VBox(
            Texts.text(says(report), "section-title"),
            Texts.text(words.say("desk.common.fault.code", report.code())),
            details,
            new HBox(copy, space, done));
    content.getStyleClass().add("fault-window");
    return content;
  }

  /** A full disk or a stick that was pulled out is no fault of the program: it has a sentence. */
  private String says(FaultReport report) {
    return words.say(
        switch (report.trouble()) {
          case "full" -> "desk.common.fault.full";
          case "gone" -> "desk.common.fault.gone";
          case "read-only" -> "desk.common.fault.read-only";
          case "busy" -> "desk.common.fault.busy";
          case "damaged" -> "desk.common.fault.damaged";
          default -> "desk.common.fault.says";
        });
  }
}
