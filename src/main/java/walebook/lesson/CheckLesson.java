package walebook.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Holds pack.yaml against its folder, its lesson's text and itself, where a schema can't see. */
final class CheckLesson {
  private final YamlDoc doc;
  private final List<Problem> problems = new ArrayList<>();

  private CheckLesson(YamlDoc doc) {
    this.doc = doc;
  }

  /**
   * What doesn't fit together.
   *
   * @param faults keys of the faults that the program knows; others are a pack's own
   */
  static List<Problem> check(
      YamlDoc doc, String folder, String textFile, LessonText text, List<String> faults) {
    CheckLesson check = new CheckLesson(doc);
    check.name(folder);
    check.minutes();
    if (!text.steps().isEmpty() && doc.at("/steps").isArray()) {
      check.steps(textFile, text);
    }
    check.once("/cautions", "key");
    check.once("/trouble", "fault");
    check.faults(faults);
    check.load();
    check.success();
    return check.problems;
  }

  private void name(String folder) {
    JsonNode name = doc.at("/name");
    boolean written = name.asString("").matches(PackSchema.KEY);
    if (written && !name.asString().equals(folder)) {
      problems.add(doc.atValue("pack.name-folder", "/name", name.asString(), folder));
    }
  }

  private void minutes() {
    int sum = 0;
    for (JsonNode step : doc.at("/steps")) {
      JsonNode minutes = step.path("minutes");
      if (!minutes.isIntegralNumber()) {
        return;
      }
      sum += minutes.asInt(0);
    }
    JsonNode whole = doc.at("/minutes");
    if (whole.isIntegralNumber() && !doc.at("/steps").isEmpty() && whole.asInt(0) != sum) {
      String found = CheckShape.shown(whole);
      problems.add(doc.atValue("pack.minutes-sum", "/minutes", found, String.valueOf(sum)));
    }
  }

  /** Every heading of the text is a step and every step a heading, in one order. */
  private void steps(String textFile, LessonText text) {
    List<String> headings = text.steps().stream().map(LessonText.Step::heading).toList();
    List<String> steps = new ArrayList<>();
    for (JsonNode step : doc.at("/steps")) {
      steps.add(step.path("heading").asString(""));
    }
    for (int i = 0; i < headings.size(); i++) {
      if (headings.indexOf(headings.get(i)) < i) {
        Place place = new Place.Spot(textFile, text.steps().get(i).line(), 1, "");
        problems.add(Problem.refuse("pack.heading-twice", place, headings.get(i), ""));
        return;
      }
    }
    boolean matched = true;
    for (int i = 0; i < steps.size(); i++) {
      matched &= known("/steps/" + i + "/heading", steps.get(i), headings);
    }
    for (LessonText.Step each : text.steps()) {
      if (matched && !steps.contains(each.heading())) {
        Place place = new Place.Spot(textFile, each.line(), 1, "");
        problems.add(Problem.refuse("pack.step-missing", place, each.heading(), "steps"));
        matched = false;
      }
    }
    if (matched) {
      troubleSteps(headings);
    }
    if (matched && !steps.equals(headings)) {
      problems.add(doc.atKey("pack.step-order", "/steps", "", String.join(" | ", headings)));
    }
  }

  private boolean known(String at, String step, List<String> headings) {
    if (step.isEmpty() || headings.contains(step)) {
      return true;
    }
    String near = NearMiss.of(step, headings);
    problems.add(
        near == null
            ? doc.atValue("pack.step-unknown", at, step, String.join(" | ", headings))
            : doc.atValue("pack.step-unknown-near", at, step, near));
    return false;
  }

  /** What goes wrong at a step names a step of the lesson. */
  private void troubleSteps(List<String> headings) {
    for (int i = 0; i < doc.at("/trouble").size(); i++) {
      for (int j = 0; j < doc.at("/trouble/" + i + "/steps").size(); j++) {
        String at = "/trouble/" + i + "/steps/" + j;
        known(at, doc.at(at).asString(""), headings);
      }
    }
  }

  private void once(String list, String key) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < doc.at(list).size(); i++) {
      String at = list + "/" + i + "/" + key;
      JsonNode value = doc.at(at);
      if (value.isString() && !seen.add(value.asString())) {
        problems.add(doc.atValue("pack.key-twice", at, value.asString(), ""));
      }
    }
  }

  /** A pack may name slips of its own; one that is nearly a known fault is asked about. */
  private void faults(List<String> known) {
    for (int i = 0; i < doc.at("/trouble").size(); i++) {
      String at = "/trouble/" + i + "/fault";
      String fault = doc.at(at).asString("");
      String near = fault.matches(PackSchema.KEY) ? NearMiss.of(fault, known) : null;
      if (near != null && !known.contains(fault)) {
        Problem told = doc.atValue("pack.fault-near", at, fault, near);
        problems.add(Problem.ask(told.code(), told.place(), fault, near));
      }
    }
  }

  private void load() {
    String pull = doc.at("/measure/pull").asString("");
    if (doc.at("/measure").has("load_g") && !pull.isEmpty() && !pull.equals("load")) {
      Problem told = doc.atKey("pack.load-unused", "/measure/load_g", pull, "load");
      problems.add(Problem.ask(told.code(), told.place(), pull, "load"));
    }
  }

  private void success() {
    if (!doc.at("/plan/kind").asString("").equals(ReadingsPlan.KIND)) {
      return;
    }
    Set<String> ofPieces =
        Set.of(
            Success.Kind.SEAM_SHARE_AT_LEAST.key(),
            Success.Kind.SEAM_STRETCH_AT_LEAST.key(),
            Success.Kind.EDGE_CHANGE_AT_MOST.key(),
            Success.Kind.APPEARANCE_AT_LEAST.key());
    for (int i = 0; i < doc.at("/success").size(); i++) {
      String at = "/success/" + i + "/check";
      String kind = doc.at(at).asString("");
      if (ofPieces.contains(kind)) {
        problems.add(doc.atValue("pack.success-kind", at, kind, PiecesPlan.KIND));
      }
    }
  }
}
