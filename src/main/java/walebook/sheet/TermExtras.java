package walebook.sheet;

import java.util.List;
import walebook.compare.assessed.AssessedClass;

/** What other rooms worked out and worded for the term's record. */
public record TermExtras(List<KitRow> kit, List<GarmentRow> garments, AssessedClass assessed) {
  public static final TermExtras NONE = new TermExtras(List.of(), List.of(), AssessedClass.NONE);

  public TermExtras {
    kit = List.copyOf(kit);
    garments = List.copyOf(garments);
  }
}
