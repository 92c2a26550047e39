package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import walebook.cloth.Decision;
import walebook.words.Words;
import walebook.working.Verdict;
import walebook.working.Working;

class WorkingBoardViewModelTest {
  @Test
  void goesLineByLineFromTheQuestionToTheAnswer() {
    Working working = Decision.of(52, 0.5, 50).value();
    WorkingBoardViewModel model = new WorkingBoardViewModel(working, Words.english());
    assertThat(model.line().says()).isEqualTo(Words.english().say(working.title()));
    model.back();
    assertThat(model.placeProperty().get()).isZero();
    for (int i = 0; i < working.steps().size(); i++) {
      model.next();
      assertThat(model.line().numbers()).isEqualTo(working.steps().get(i).numbers());
    }
    model.next();
    assertThat(model.line().verdict()).isEqualTo(Verdict.MET);
    assertThat(model.line().says()).isEqualTo(Words.english().say(working.says()));
    for (int i = 0; i < 5; i++) {
      model.next();
    }
    assertThat(model.placeProperty().get()).isEqualTo(model.lines().size() - 1);
  }
}
