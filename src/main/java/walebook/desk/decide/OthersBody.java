package walebook.desk.decide;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Session;
import walebook.record.GarmentSheet;
import walebook.record.Student;

/** What a student may not see of somebody else's sheet: the girths of the body. */
final class OthersBody {
  private static final String BODY = "body-";
  private static final String KEEP = "keep-body";

  private OthersBody() {}

  /** Whether a student is picked as who is here, and the sheet is another one's. */
  static boolean of(Session session, GarmentSheet sheet) {
    Student now = session.studentProperty().get();
    UUID whose = sheet.studentId();
    return now != null && whose != null && !whose.equals(now.id());
  }

  /** The same fields with nothing of a body in them. */
  static Map<String, String> without(Map<String, String> typed) {
    Map<String, String> rest = new HashMap<>(typed);
    rest.replaceAll((field, text) -> field.startsWith(BODY) ? "" : text);
    rest.put(KEEP, "no");
    return rest;
  }

  /** Says whose the girths are, and that they are kept where they are. */
  static String says(Session session, GarmentSheet sheet, boolean kept) {
    @Nullable UUID whose = sheet.studentId();
    Student student = whose == null ? null : session.book().students().find(whose);
    String name =
        student == null
            ? "–"
            : session.namesHiddenProperty().get() ? student.alias() : student.name();
    return kept
        ? session.words().say("desk.decide.sheet.others-kept", name)
        : session.words().say("desk.decide.sheet.others-none", name);
  }
}
