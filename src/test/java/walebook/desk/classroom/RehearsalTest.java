package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import walebook.words.Words;

/** It is played on a thread of the background, while the window shows something else. */
@ExtendWith(ApplicationExtension.class)
class RehearsalTest {
  @Test
  void playsAwayFromTheWindowsThread() {
    assertThat(Platform.isFxApplicationThread()).isFalse();
    assertThatCode(() -> Rehearsal.play(Words.english())).doesNotThrowAnyException();
  }
}
