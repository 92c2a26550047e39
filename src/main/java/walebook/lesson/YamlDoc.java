package walebook.lesson;

import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * pack.yaml as a tree, with the spot where each value and each key stands.
 *
 * @param values spots by JSON pointer (RFC 6901)
 * @param keys spots of keys, by the pointer of their value
 * @param slips what was wrong with the YAML itself though it could be read on
 */
record YamlDoc(
    String file,
    JsonNode root,
    Map<String, Spot> values,
    Map<String, Spot> keys,
    List<Problem> slips) {
  /** Line and column from 1. */
  record Spot(int line, int column) {}

  YamlDoc {
    values = Map.copyOf(values);
    keys = Map.copyOf(keys);
    slips = List.copyOf(slips);
  }

  /** A value by its pointer; a missing node where there is none. */
  JsonNode at(String pointer) {
    return root.at(pointer);
  }

  /** A problem at a value. */
  Problem atValue(String code, String pointer, String found, String wanted) {
    return Problem.refuse(code, place(values, pointer), found, wanted);
  }

  /** A problem at a key, or at the value where it has none. */
  Problem atKey(String code, String pointer, String found, String wanted) {
    return Problem.refuse(code, place(keys, pointer), found, wanted);
  }

  /** A problem of a field that is not there, shown at what should hold it. */
  Problem missing(String holder, String field) {
    Place.Spot at = place(keys, holder);
    String path = at.field().isEmpty() ? field : at.field() + "." + field;
    Place place = new Place.Spot(at.file(), at.line(), at.column(), path);
    return Problem.refuse("pack.field-missing", place, "", field);
  }

  private Place.Spot place(Map<String, Spot> spots, String pointer) {
    Spot spot = spots.get(pointer);
    for (String up = pointer;
        spot == null;
        up = up.substring(0, Math.max(0, up.lastIndexOf('/')))) {
      spot = values.get(up);
      if (up.isEmpty() && spot == null) {
        spot = new Spot(1, 1);
      }
    }
    return new Place.Spot(file, spot.line(), spot.column(), field(pointer));
  }

  /** A pointer as people read it: {@code plan.factors[0].levels}. */
  static String field(String pointer) {
    StringBuilder path = new StringBuilder();
    for (String part : pointer.split("/")) {
      String plain = part.replace("~1", "/").replace("~0", "~");
      if (plain.matches("[0-9]+")) {
        path.append('[').append(plain).append(']');
      } else if (!plain.isEmpty()) {
        path.append(path.length() == 0 ? "" : ".").append(plain);
      }
    }
    return path.toString();
  }

  /** A pointer one step down. */
  static String under(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }
}
