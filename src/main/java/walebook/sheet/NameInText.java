package walebook.sheet;

import java.util.List;
import java.util.Set;

/**
 * A person's name that stands in free text of what would go out.
 *
 * @param name as the book has it, whole or the part that stands there
 * @param whole true for a full name, which codes would cover; a part stays as it is
 * @param places where it stands
 */
public record NameInText(String name, boolean whole, List<Place> places) {

  /**
   * One sheet.
   *
   * @param cells how many cells and headers of it hold the name
   * @param formats the kinds of file that have the sheet
   */
  public record Place(String sheet, int cells, Set<TermFormat> formats) {
    public Place {
      formats = Set.copyOf(formats);
    }
  }

  public NameInText {
    places = List.copyOf(places);
  }
}
