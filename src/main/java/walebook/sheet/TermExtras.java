package walebook.sheet;

import java.util.List;

/** What other rooms worked out and worded for the term's record. */
public record TermExtras(List<KitRow> kit, List<GarmentRow> garments) {
  public static final TermExtras NONE = new TermExtras(List.of(), List.of());

  public TermExtras {
    kit = List.copyOf(kit);
    garments = List.copyOf(garments);
  }
}
