package walebook.compare.assessed;

import java.util.List;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Help;
import walebook.record.Marking;

/** Keys of the words for what is marked, by whom, and for the help a piece had. */
public final class MarkWords {
  private MarkWords() {}

  public static String of(Marking marking) {
    return switch (marking) {
      case CHOICE -> "compare.marking.choice";
      case TECHNIQUE -> "compare.marking.technique";
      case PERFORMANCE -> "compare.marking.performance";
      case FINISH -> "compare.marking.finish";
      case REASONING -> "compare.marking.reasoning";
    };
  }

  /** The marks that count for a criterion; one key alone where all of them do. */
  public static List<String> of(Criterion criterion) {
    return criterion.looksAtAll()
        ? List.of("compare.marking.all")
        : criterion.inOrder().stream().map(MarkWords::of).toList();
  }

  public static String of(Help help) {
    return switch (help) {
      case NONE -> "compare.help.none";
      case PROMPTED -> "compare.help.prompted";
      case HANDS_ON -> "compare.help.hands-on";
    };
  }

  public static String of(CheckedBy by) {
    return switch (by) {
      case SELF -> "compare.checked-by.self";
      case TUTOR -> "compare.checked-by.tutor";
    };
  }
}
