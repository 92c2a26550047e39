package walebook.act.decide;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.Girth;
import walebook.garment.OpeningEdge;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSheet;
import walebook.working.Message;
import walebook.working.Working;

/**
 * Girths and openings that are asked about and not answered yet: nothing is worked out with them.
 *
 * @param fields names of their fields
 */
public record UnansweredGirths(Set<String> fields) {
  private static final String BODY = "body-";
  private static final String FINISHED = "finished-";
  private static final String OPENING = "opening-";

  public UnansweredGirths {
    fields = Set.copyOf(fields);
  }

  /**
   * Those among a form's problems.
   *
   * @param confirmed whether a field's value was confirmed as it stands
   */
  public static UnansweredGirths of(List<Problem> problems, Predicate<String> confirmed) {
    Set<String> open = new LinkedHashSet<>();
    for (Problem each : problems) {
      if (!each.refuses()
          && each.place() instanceof Place.Field field
          && isGirth(field.name())
          && !confirmed.test(field.name())) {
        open.add(field.name());
      }
    }
    return new UnansweredGirths(open);
  }

  private static boolean isGirth(String field) {
    return field.startsWith(BODY) || field.startsWith(FINISHED) || field.startsWith(OPENING);
  }

  /** The sheet without them. */
  public GarmentSheet without(GarmentSheet sheet) {
    return new GarmentSheet(
        sheet.id(),
        sheet.studentId(),
        sheet.name(),
        sheet.kind(),
        sheet.clothId(),
        sheet.grainRound(),
        sheet.wear(),
        sheet.pattern(),
        sheet.sewing(),
        sheet.girths().stream().filter(each -> !fields.contains(FINISHED + each.girth())).toList(),
        sheet.openings().stream().map(this::without).toList(),
        sheet.remark(),
        sheet.stamp());
  }

  private GarmentOpening without(GarmentOpening of) {
    return !fields.contains(OPENING + of.edge())
        ? of
        : new GarmentOpening(
            of.edge(),
            of.over(),
            null,
            of.seams(),
            of.shape(),
            of.bandRatio(),
            of.bandWidthMm(),
            of.edges());
  }

  /** The body's girths in mm by key, without them. */
  public Map<String, Double> without(Map<String, Double> body) {
    Map<String, Double> rest = new HashMap<>(body);
    rest.keySet().removeIf(key -> fields.contains(BODY + key));
    return rest;
  }

  /** Answers worked without them; each that waits for one says so. */
  public GarmentAnswers told(GarmentAnswers answers) {
    return new GarmentAnswers(
        answers.question(),
        answers.checks().stream().map(this::told).collect(Collectors.toList()),
        answers.advice(),
        answers.cautions());
  }

  private Check told(Check check) {
    String key = check.working().says().key();
    if (!key.equals("garment.check.missing-girth")
        && !key.equals("garment.check.missing-opening")) {
      return check;
    }
    for (Girth girth : Girth.values()) {
      String name = Message.name(girth.sayKey());
      if (check.about().args().contains(name)) {
        if (fields.contains(BODY + girth.key())) {
          return says(check, Message.of("act.decide.answer-body", name));
        }
        if (fields.contains(FINISHED + girth.key())) {
          return says(check, Message.of("act.decide.answer-finished", name));
        }
      }
    }
    for (OpeningEdge edge : OpeningEdge.values()) {
      String name = Message.name(edge.sayKey());
      if (check.about().args().contains(name) && fields.contains(OPENING + edge.key())) {
        return says(check, Message.of("act.decide.answer-opening", name));
      }
    }
    return check;
  }

  private static Check says(Check check, Message says) {
    Working was = check.working();
    return new Check(
        check.kind(),
        check.about(),
        new Working(
            was.name(),
            was.title(),
            was.result(),
            was.verdict(),
            says,
            was.steps(),
            was.assumptions(),
            was.cautions(),
            was.sources()),
        check.verdict(),
        check.plan(),
        check.question(),
        check.weakest());
  }
}
