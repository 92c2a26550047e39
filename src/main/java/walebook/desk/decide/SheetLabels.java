package walebook.desk.decide;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import walebook.garment.Girth;
import walebook.garment.OpeningEdge;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.words.Words;

/** The label of a sheet's field, for a sentence that stands away from it. */
final class SheetLabels {
  private SheetLabels() {}

  /** What the fields are called that keep the sheet from being read. */
  static String ofRefused(Words words, List<Problem> problems) {
    Set<String> labels = new LinkedHashSet<>();
    for (Problem each : problems) {
      if (each.refuses() && each.place() instanceof Place.Field field) {
        labels.add(of(words, field.name()));
      }
    }
    return String.join("; ", labels);
  }

  static String of(Words words, String field) {
    for (Girth girth : Girth.values()) {
      if (field.equals("body-" + girth.key())) {
        return words.say("desk.decide.label.body", words.say(girth.sayKey()));
      }
      if (field.equals("finished-" + girth.key())) {
        return words.say("desk.decide.label.finished", words.say(girth.sayKey()));
      }
    }
    for (OpeningEdge edge : OpeningEdge.values()) {
      if (field.equals("opening-" + edge.key()) || field.startsWith(edge.key() + "-")) {
        return words.say("desk.decide.label.opening", words.say(edge.sayKey()));
      }
    }
    String key = "desk.decide.field." + field;
    return words.has(key) ? words.say(key) : field;
  }
}
