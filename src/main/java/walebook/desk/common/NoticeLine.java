package walebook.desk.common;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import walebook.words.Words;

/** The line at the foot of a place: what was saved, and undo beside it. */
public final class NoticeLine extends HBox {
  private final ObjectProperty<Notice> notice =
      new SimpleObjectProperty<>(this, "notice", Notice.NONE);
  private final Label says = Texts.text("", "soft");
  private final Button undo;

  public NoticeLine(Words words) {
    undo = new Button(words.say("desk.common.undo"));
    undo.getStyleClass().add("quiet");
    undo.setOnAction(
        pressed -> {
          Runnable back = notice.get().undo();
          if (back != null) {
            back.run();
          }
        });
    getStyleClass().add("notice-line");
    setAccessibleRole(AccessibleRole.TEXT);
    getChildren().setAll(says, undo);
    notice.addListener((from, old, now) -> show(now));
    show(notice.get());
  }

  public ObjectProperty<Notice> noticeProperty() {
    return notice;
  }

  private void show(Notice now) {
    says.setText(now.says());
    undo.setVisible(now.undo() != null);
    undo.setManaged(now.undo() != null);
    setAccessibleText(now.says());
    notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
  }
}
