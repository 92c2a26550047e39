package walebook.act.demo;

import java.util.ArrayList;
import java.util.List;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.TestPiece;

/** A few numbers as people mistype them, so that looking at outliers finds some. */
final class DemoSlips {
  private static final int FIRST_SLIP = 67;
  private static final int SECOND_SLIP = 181;

  private DemoSlips() {}

  static List<TestPiece> slip(List<TestPiece> pieces) {
    List<TestPiece> all = new ArrayList<>(pieces);
    for (int at : new int[] {FIRST_SLIP, SECOND_SLIP}) {
      if (at < all.size()) {
        all.set(at, hundredTooMuch(all.get(at)));
      }
    }
    return all;
  }

  /** Read at the far end of the rule: 100 mm too much. */
  private static TestPiece hundredTooMuch(TestPiece piece) {
    Measure was = piece.measure();
    List<PullReading> pulls =
        was.pulls().stream()
            .map(each -> new PullReading(each.nth(), each.end(), each.endMm() + 100))
            .toList();
    return piece.with(was.withPulls(pulls));
  }
}
