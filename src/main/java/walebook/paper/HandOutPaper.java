package walebook.paper;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import walebook.lesson.LessonPack;
import walebook.lesson.PiecesPlan;
import walebook.lesson.SettingKey;

/**
 * A lesson to be handed out.
 *
 * @param cloths names of the room's cloths by the plan's slots; empty for a pack no class took up
 */
public record HandOutPaper(LessonPack pack, Map<String, String> cloths) {
  private static final Pattern CLOTH = Pattern.compile("\\b[Cc]loth ([A-Z])\\b");

  public HandOutPaper {
    cloths = Map.copyOf(cloths);
  }

  /** The text with the room's cloths in place of the plan's letters, white space made one blank. */
  String named(String text) {
    return CLOTH.matcher(HandOutText.flat(text)).replaceAll(this::nameOf);
  }

  private String nameOf(MatchResult found) {
    String slot = found.group(1).toLowerCase(Locale.ROOT);
    return Matcher.quoteReplacement(cloths.getOrDefault(slot, found.group()));
  }

  /** The levels of a factor with a comma between them. */
  String levels(PiecesPlan.Factor factor) {
    List<String> levels = factor.levels();
    return factor.key() != SettingKey.CLOTH
        ? String.join(", ", levels)
        : levels.stream()
            .map(slot -> cloths.getOrDefault(slot, slot.toUpperCase(Locale.ROOT)))
            .collect(Collectors.joining(", "));
  }
}
