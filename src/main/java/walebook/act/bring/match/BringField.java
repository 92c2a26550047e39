package walebook.act.bring.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;

/**
 * Something that a column may hold.
 *
 * @param key the field's key in forms and on the command line; its name is found by it
 */
public record BringField(String key, PieceField.Kind kind) {
  public static final String CODE = "code";
  public static final String STUDENT = "student";
  public static final String LESSON = "lesson";
  public static final String AGAIN_OF = "again-of";
  public static final String CHANGED = "changed";
  public static final String ALL_PULLS = "all-pulls";

  /** Point and size in one, such as {@code jersey 75/11}. */
  public static final String NEEDLE = "needle";

  public static final String NAME = "student-name";
  public static final String ALIAS = "student-alias";
  public static final String TIER = "student-tier";

  /** Where on the cloth a reading was taken. */
  public static final String READ_AT = "read-at";

  /** What kind of thing a note is about. */
  public static final String NOTE_ABOUT = "note-about";

  /** The piece's code, the cloth's name or the lesson's title. */
  public static final String NOTE_WHICH = "note-which";

  /** The day when a note was first saved. */
  public static final String NOTE_WRITTEN = "note-written";

  public static final String CLOTH = "cloth";
  public static final String CLOTH_NAME = "cloth-name";
  public static final String CLOTH_KIND = "cloth-kind";
  public static final String MEASURED_BY = "measured-by";

  private static final List<BringField> READINGS =
      List.of(
          choice(CLOTH),
          choice("grain"),
          choice(LESSON),
          choice(MEASURED_BY),
          new BringField("measured-on", PieceField.Kind.DATE),
          new BringField("gauge", PieceField.Kind.LENGTH),
          new BringField("stretched", PieceField.Kind.LENGTH),
          new BringField("released", PieceField.Kind.LENGTH),
          choice("pull"),
          new BringField("load", PieceField.Kind.NUMBER),
          choice("fold"),
          choice(READ_AT),
          new BringField("hold", PieceField.Kind.NUMBER),
          new BringField("rest", PieceField.Kind.NUMBER),
          new BringField("cycle", PieceField.Kind.WHOLE),
          text("remark"));

  private static final List<BringField> CLOTHS =
      List.of(
          text(CLOTH_NAME),
          choice(CLOTH_KIND),
          text("fibre"),
          new BringField("elastane", PieceField.Kind.NUMBER),
          new BringField("mass", PieceField.Kind.NUMBER),
          new BringField("cloth-width", PieceField.Kind.LENGTH),
          new BringField("thickness", PieceField.Kind.LENGTH),
          choice("frays"),
          choice("sheds"),
          choice("ladders"),
          choice("curls"),
          choice("needs-finishing"),
          text("remark"));

  private static final List<BringField> WASHES =
      List.of(
          choice(CLOTH),
          choice("grain"),
          new BringField("washed-on", PieceField.Kind.DATE),
          new BringField("before", PieceField.Kind.LENGTH),
          new BringField("after", PieceField.Kind.LENGTH),
          text("wash"));

  private static final List<BringField> NOTES =
      List.of(
          choice(NOTE_ABOUT),
          choice(NOTE_WHICH),
          new BringField(NOTE_WRITTEN, PieceField.Kind.DATE),
          text("note-from"),
          text("note-body"));

  private static final List<BringField> ROSTER = List.of(text(NAME), text(ALIAS), choice(TIER));
  private static final List<BringField> PIECES = pieces();

  /** The fields of a kind of table, in the order of the work. */
  public static List<BringField> of(BringWhat what) {
    return switch (what) {
      case ROSTER -> ROSTER;
      case CLOTHS -> CLOTHS;
      case PIECES -> PIECES;
      case READINGS -> READINGS;
      case WASHES -> WASHES;
      case NOTES -> NOTES;
    };
  }

  /** The field with this key, or null when a table of this kind has none. */
  public static @Nullable BringField find(BringWhat what, String key) {
    return of(what).stream().filter(each -> each.key().equals(key)).findFirst().orElse(null);
  }

  private static List<BringField> pieces() {
    List<BringField> all = new ArrayList<>();
    all.add(text(CODE));
    all.add(choice(STUDENT));
    all.add(choice(LESSON));
    Arrays.stream(PieceField.values())
        .filter(each -> each != PieceField.OTHER_CHANGE)
        .forEach(each -> all.add(new BringField(each.key(), each.kind())));
    all.addAll(List.of(text(NEEDLE), text(ALL_PULLS), text(AGAIN_OF), text(CHANGED)));
    return List.copyOf(all);
  }

  private static BringField text(String key) {
    return new BringField(key, PieceField.Kind.TEXT);
  }

  private static BringField choice(String key) {
    return new BringField(key, PieceField.Kind.CHOICE);
  }
}
