package walebook.desk.decide;

import walebook.garment.Girth;
import walebook.garment.OpeningEdge;
import walebook.words.Words;

/** The label of a sheet's field, for a sentence that stands away from it. */
final class SheetLabels {
  private SheetLabels() {}

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
