package walebook.paper;

import java.util.List;

/**
 * What came of making pages.
 *
 * @param pages how many
 * @param lacking letters that no typeface has, each once, as they would be written
 */
public record Made(int pages, List<String> lacking) {
  public Made {
    lacking = List.copyOf(lacking);
  }

  static Made of(Sheets sheets) {
    return new Made(
        sheets.count(), sheets.lacking().stream().sorted().map(Character::toString).toList());
  }
}
