package walebook.act.bring.match;

import java.util.List;
import java.util.Map;

/** What people head their columns with; common practice, gathered as plain trade words. */
final class ColumnWords {
  private static final Map<String, List<String>> KNOWN =
      Map.ofEntries(
          Map.entry("student-name", List.of("name", "student", "full name", "learner", "pupil")),
          Map.entry("student-alias", List.of("code", "alias", "initials", "number", "id")),
          Map.entry("student-tier", List.of("tier", "level", "how much of a plan", "plan")),
          Map.entry("code", List.of("code", "piece", "piece code", "label", "sample id", "id")),
          Map.entry("cloth-name", List.of("cloth", "fabric", "material", "name")),
          Map.entry("cloth-kind", List.of("kind", "structure", "knit", "type", "kind of cloth")),
          Map.entry("fibre", List.of("fibre", "fibres", "fiber", "content", "composition")),
          Map.entry("elastane", List.of("elastane", "elastane share")),
          Map.entry("mass", List.of("mass", "weight", "mass per area", "gsm")),
          Map.entry("cloth-width", List.of("width", "cloth width", "width of the cloth")),
          Map.entry("thickness", List.of("thickness", "thick")),
          Map.entry("needs-finishing", List.of("needs finishing", "edge to finish")),
          Map.entry("washed-on", List.of("washed on", "date", "day", "day washed", "when")),
          Map.entry("before", List.of("before", "before the wash", "length before", "l0")),
          Map.entry("after", List.of("after", "after the wash", "length after", "l1")),
          Map.entry("wash", List.of("wash", "how it was washed", "washing", "programme")),
          Map.entry("stretched", List.of("stretched", "stretched length", "l1", "stretched to")),
          Map.entry("read-at", List.of("where on the cloth", "edge", "where", "place")),
          Map.entry("cycle", List.of("cycle", "which stretch", "stretch number")),
          Map.entry("note-about", List.of("about", "kind", "what it is about")),
          Map.entry("note-which", List.of("which", "piece", "cloth", "lesson", "title")),
          Map.entry("note-written", List.of("written", "written on", "date", "day", "when")),
          Map.entry("note-from", List.of("from", "author", "who", "by", "written by")),
          Map.entry("note-body", List.of("note", "notes", "words", "text", "comment")),
          Map.entry("student", List.of("student", "name", "who", "sewn by", "sewer", "learner")),
          Map.entry("lesson", List.of("lesson", "session", "topic")),
          Map.entry("sewn-on", List.of("sewn on", "date", "day", "day sewn", "sewn", "when")),
          Map.entry("cloth", List.of("cloth", "fabric", "material", "knit")),
          Map.entry("grain", List.of("grain", "grain along the seam", "direction", "grainline")),
          Map.entry("layers", List.of("layers", "plies", "number of layers")),
          Map.entry("method", List.of("method", "what is sewn", "seam or hem", "kind of piece")),
          Map.entry("machine", List.of("machine", "machine number", "machine no")),
          Map.entry("stitch", List.of("stitch", "stitch type", "iso 4915", "stitch number")),
          Map.entry("dial-width", List.of("width", "stitch width", "width dial", "sw")),
          Map.entry("dial-length", List.of("length", "stitch length", "length dial", "sl")),
          Map.entry("needle-point", List.of("needle point", "needle kind", "needle type", "point")),
          Map.entry("needle-nm", List.of("needle size", "nm", "needle nm", "size")),
          Map.entry("needle", List.of("needle")),
          Map.entry("hem-method", List.of("hem", "hem method")),
          Map.entry("differential-feed", List.of("differential feed", "differential", "diff")),
          Map.entry("thread", List.of("thread", "threads", "needle thread")),
          Map.entry("pressure", List.of("pressure", "presser foot pressure", "foot pressure")),
          Map.entry("tension", List.of("tension", "needle tension", "thread tension")),
          Map.entry("stabiliser", List.of("stabiliser", "stabilizer", "tape", "interfacing")),
          Map.entry("sewn-width", List.of("sewn width", "width as sewn")),
          Map.entry("sewn-length", List.of("sewn length", "length as sewn")),
          Map.entry("gauge", List.of("gauge", "gauge length", "marked length", "marks", "l0")),
          Map.entry(
              "edge-before", List.of("edge before", "before", "length before", "before sewing")),
          Map.entry("edge-sewn", List.of("edge sewn", "after", "length after", "after sewing")),
          Map.entry("edge-pressed", List.of("edge pressed", "pressed", "after pressing")),
          Map.entry("end", List.of("gave or held", "result", "end", "broke or held", "ended")),
          Map.entry(
              "end-length",
              List.of("length reached", "stretched to", "gave at", "held at", "broke at", "l1")),
          Map.entry("end-2", List.of("second pull", "gave or held 2", "end 2")),
          Map.entry("end-length-2", List.of("length reached 2", "stretched to 2")),
          Map.entry("end-3", List.of("third pull", "gave or held 3", "end 3")),
          Map.entry("end-length-3", List.of("length reached 3", "stretched to 3")),
          Map.entry("all-pulls", List.of("all pulls", "pulls")),
          Map.entry("broke", List.of("what broke", "what went first", "broke")),
          Map.entry("released", List.of("released", "released length", "after release", "l2")),
          Map.entry("need", List.of("need", "stretch needed", "needed stretch", "target")),
          Map.entry("rest", List.of("rest", "rest time", "rested")),
          Map.entry("fold", List.of("fold", "folded", "how the cloth lay")),
          Map.entry("pull", List.of("pull", "how it was pulled", "force")),
          Map.entry("load", List.of("load", "weight", "hung weight")),
          Map.entry("hold", List.of("hold", "held for", "hold time")),
          Map.entry("measured-by", List.of("measured by", "who measured")),
          Map.entry("measured-on", List.of("measured on", "date measured", "day measured")),
          Map.entry("grade", List.of("grade", "look", "appearance", "rating", "score", "mark")),
          Map.entry("faults", List.of("faults", "fault", "problems", "defects", "what was seen")),
          Map.entry("outcome", List.of("outcome", "verdict", "what becomes of it", "decision")),
          Map.entry("remark", List.of("remark", "remarks", "note", "notes", "comment", "comments")),
          Map.entry(
              "minutes",
              List.of(
                  "minutes",
                  "minutes to sew",
                  "time to sew",
                  "sewing time",
                  "time taken",
                  "mins",
                  "duration")),
          Map.entry("again-of", List.of("follows", "tries again", "parent", "earlier piece")),
          Map.entry("changed", List.of("changed", "what was changed", "change")));

  /** Words that tell a field only beside its unit: a bare time may be the time of day. */
  private static final Map<String, List<String>> WITH_UNIT = Map.of("minutes", List.of("time"));

  private ColumnWords() {}

  static List<String> of(String field) {
    return KNOWN.getOrDefault(field, List.of());
  }

  /** What else heads a column whose header names a unit of the field. */
  static List<String> withUnit(String field) {
    return WITH_UNIT.getOrDefault(field, List.of());
  }
}
