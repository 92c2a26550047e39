package walebook.lesson;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import walebook.problem.Place;
import walebook.problem.Problem;

/** The common slips in YAML, told for people who never heard of a block or a scalar. */
final class YamlSlip {
  private YamlSlip() {}

  static Problem of(MarkedYamlEngineException e, Place place) {
    String said = String.valueOf(e.getProblem());
    String around = String.valueOf(e.getContext());
    String begins = e.getContextMark().map(mark -> String.valueOf(mark.getLine() + 1)).orElse("?");
    if (said.contains("TAB")) {
      return Problem.refuse("pack.yaml-tab", place, "", "");
    } else if (around.contains("quoted scalar")) {
      return Problem.refuse("pack.yaml-quote", place, begins, "");
    } else if (said.contains("<stream end>") && !said.contains("',' or")) {
      return Problem.refuse("pack.yaml-end", place, "", "");
    } else if (said.startsWith("expected ',' or")) {
      String end = said.contains("'}'") ? "}" : "]";
      return Problem.refuse("pack.yaml-list", place, begins, end);
    } else if (said.startsWith("mapping values are not allowed")) {
      return Problem.refuse("pack.yaml-colon", place, "", "");
    } else if (said.startsWith("could not find expected ':'")) {
      return Problem.refuse("pack.yaml-no-colon", place, begins, "");
    } else if (said.startsWith("expected <block end>")) {
      return Problem.refuse("pack.yaml-indent", place, begins, "");
    }
    return Problem.refuse("pack.yaml", place, ReadRuns.firstLine(said), "");
  }
}
