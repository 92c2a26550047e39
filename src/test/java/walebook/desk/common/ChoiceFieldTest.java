package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.words.Words;
import walebook.working.Verdict;

@ExtendWith(ApplicationExtension.class)
class ChoiceFieldTest {
  private final ObjectProperty<Verdict> chosen = new SimpleObjectProperty<>(Verdict.MET);

  @SuppressWarnings("NullAway.Init")
  private ChoiceField<Verdict> choice;

  @SuppressWarnings("NullAway.Init")
  private NumberField next;

  @Start
  void start(Stage stage) {
    Words words = Words.english();
    choice =
        new ChoiceField<>(
            words,
            "outcome",
            FXCollections.observableArrayList(Verdict.values()),
            chosen,
            verdict -> "it is " + verdict);
    next = new NumberField(words, "width, mm", "2.5", NumberEntry.plain("width"));
    stage.setScene(new Scene(new FieldGroup("What I saw", choice, next), 500, 300));
    stage.show();
    choice.box().requestFocus();
  }

  @Test
  void arrowsChooseAndEnterMovesOn(FxRobot robot) {
    robot.type(KeyCode.DOWN);
    assertThat(chosen.get()).isEqualTo(Verdict.TOO_CLOSE);
    assertThat(choice.box().getConverter().toString(Verdict.MET)).isEqualTo("it is MET");
    robot.type(KeyCode.ENTER);
    assertThat(next.field().isFocused()).isTrue();
  }

  @Test
  void enterInTheOpenListTakesTheChoiceAndStays(FxRobot robot) {
    robot.interact(() -> choice.box().show());
    robot.type(KeyCode.DOWN).type(KeyCode.ENTER);
    assertThat(chosen.get()).isEqualTo(Verdict.TOO_CLOSE);
    assertThat(choice.box().isShowing()).isFalse();
    assertThat(choice.box().isFocused()).isTrue();
  }

  @Test
  void whatIsChosenIsHeardAndShownWholeHoweverNarrowTheField(FxRobot robot) {
    assertThat(choice.box().getAccessibleText()).isEqualTo("outcome: it is MET");
    assertThat(choice.box().getTooltip()).isNull();
    robot.moveTo(choice.box());
    assertThat(choice.box().getTooltip().getText()).isEqualTo("it is MET");
    robot.interact(() -> chosen.set(Verdict.NOT_MET));
    assertThat(choice.box().getAccessibleText()).isEqualTo("outcome: it is NOT_MET");
    assertThat(choice.box().getTooltip().getText()).isEqualTo("it is NOT_MET");
  }
}
