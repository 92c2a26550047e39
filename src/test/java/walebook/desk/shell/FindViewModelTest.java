package walebook.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;

@SuppressWarnings("NullAway.Init")
class FindViewModelTest {
  @TempDir Path folder;

  private PlannedClass made;
  private Session session;
  private FindViewModel model;

  @BeforeEach
  void make() {
    made = PlannedClass.in(folder.resolve("a.walebook"), 1);
    session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    model = new FindViewModel(session);
  }

  @AfterEach
  void close() {
    made.close();
  }

  @Test
  void aScannedLabelOpensTheLogFormInItsStudentsName() {
    model.textProperty().set(made.planned(1).toString());
    model.find();
    assertThat(session.wishProperty().get())
        .isEqualTo(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(1)));
    assertThat(session.studentProperty().get()).isEqualTo(made.room.first);
    assertThat(session.schoolClassProperty().get()).isEqualTo(made.room.schoolClass);
    assertThat(model.textProperty().get()).isEmpty();
  }

  @Test
  void whatIsNotFoundIsSaidAndStaysToBeMended() {
    model.textProperty().set("QQQQQQ");
    model.find();
    assertThat(model.saysProperty().get()).isNotEmpty();
    assertThat(model.textProperty().get()).isEqualTo("QQQQQQ");
    assertThat(session.wishProperty().get()).isNull();
    model.textProperty().set("QQQQQ");
    assertThat(model.saysProperty().get()).isEmpty();
  }
}
