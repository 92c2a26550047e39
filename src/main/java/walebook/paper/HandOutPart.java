package walebook.paper;

import java.util.ArrayList;
import java.util.List;
import walebook.lesson.LessonPack;
import walebook.lesson.LessonText;

/**
 * What a hand-out can show or leave out, never cut.
 *
 * @param nth which of its kind, from 0
 */
record HandOutPart(Kind kind, int nth) {
  /** Kinds in the order in which they are needed, the first being the last to be left out. */
  enum Kind {
    TITLE,
    QUESTION,
    TIERS,
    CAUTION,
    STEP,
    CLOTHS,
    FACTORS,
    AIM,
    SUCCESS,
    PICTURES,
    /** The summary's first sentence. */
    SUMMARY,
    /** What a step asks for, each point in its first sentence. */
    POINTS,
    /** All that a step's numbered points say. */
    MORE_POINTS,
    MORE_SUMMARY,
    /** What stands before a step's numbered points, and the points without a number. */
    AROUND,
    MORE_PICTURES,
    FIGURE
  }

  /** All parts of a pack, those needed most first. */
  static List<HandOutPart> of(LessonPack pack) {
    List<HandOutPart> parts = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (int i = 0; i < count(kind, pack); i++) {
        parts.add(new HandOutPart(kind, i));
      }
    }
    return List.copyOf(parts);
  }

  private static int count(Kind kind, LessonPack pack) {
    LessonPack.Teaching teaching = pack.teaching();
    List<LessonText.Step> steps = pack.text().steps();
    return switch (kind) {
      case CAUTION -> teaching.cautions().size();
      case AIM -> teaching.aims().size();
      case SUCCESS -> pack.success().size();
      case FIGURE -> teaching.figures().size();
      case STEP, POINTS, MORE_POINTS, AROUND -> steps.size();
      default -> 1;
    };
  }

  /** How many of the parts are of this kind or of one that is needed more. */
  static int upTo(Kind last, List<HandOutPart> parts) {
    return (int) parts.stream().filter(each -> each.kind().compareTo(last) <= 0).count();
  }
}
