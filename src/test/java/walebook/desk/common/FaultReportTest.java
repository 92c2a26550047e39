package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FaultReportTest {
  @Test
  void theSameFaultHasTheSameShortCode() {
    FaultReport first = FaultReport.of(new IllegalStateException("needle 7"));
    FaultReport again = FaultReport.of(new RuntimeException(new IllegalStateException("other")));
    FaultReport another = FaultReport.of(new ArithmeticException("needle 7"));
    assertThat(first.code()).hasSize(5).isEqualTo(again.code()).isNotEqualTo(another.code());
    assertThat(first.details()).contains("needle 7").contains("FaultReportTest");
  }
}
