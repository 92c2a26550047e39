package walebook.sheet.in;

import java.io.Serial;
import org.xml.sax.SAXException;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Ends the reading of a file with the reason. */
final class Stopped extends SAXException {
  @Serial private static final long serialVersionUID = 1;
  private final transient Problem problem;

  Stopped(String code, Place place, String found, String wanted) {
    super(code);
    this.problem = new Problem(code, place, found, wanted, Problem.Weight.REFUSE);
  }

  Problem problem() {
    return problem;
  }
}
