package walebook.act.demo;

import java.util.List;
import java.util.Map;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.StitchChoice;

/**
 * Two invented garments with something to find out: a top laid the wrong way round on a cloth that
 * stretches one way, and a sweatshirt whose neckband does not pass over the head. The bodies are
 * invented too.
 */
final class DemoGarments {
  private static final String STRAIGHT = "straight";
  private static final GarmentEdge SEAM = new GarmentEdge("seam", null, null);
  private static final GarmentEdge HEM = new GarmentEdge("hem", null, null);

  private final Book book;
  private final DemoRoom room;

  DemoGarments(Book book, DemoRoom room) {
    this.book = book;
    this.room = room;
  }

  void save() {
    GarmentSheet top = top();
    book.garments().add(top);
    book.garments()
        .keepBody(
            top.id(),
            Map.of(
                "chest", 900.0, "waist", 740.0, "upper-arm", 290.0, "head", 565.0, "hand", 210.0));
    GarmentSheet sweatshirt = sweatshirt();
    book.garments().add(sweatshirt);
    book.garments()
        .keepBody(
            sweatshirt.id(), Map.of("chest", 960.0, "hip", 1000.0, "head", 575.0, "hand", 225.0));
  }

  private GarmentSheet top() {
    return new GarmentSheet(
        Ids.next(),
        room.row(DemoStudent.ALL.get(0)).id(),
        "Striped top, first try",
        "fitted-top",
        room.row(DemoCloth.RIB).id(),
        Grain.WALE,
        "day",
        new PatternAsks(100.0, 135.0, 10.0),
        new GarmentSewing(
            new StitchChoice(MachineKind.SEWING, "304", 2.5, 2.5), 10.0, false, false),
        List.of(
            new GarmentGirth("chest", 820, 2),
            new GarmentGirth("waist", 700, 2),
            new GarmentGirth("upper-arm", 270, 1)),
        List.of(
            new GarmentOpening("neckline", "head", 480.0, 2, "scoop", null, null, List.of(SEAM)),
            new GarmentOpening("sleeve-hem", "hand", 190.0, 1, STRAIGHT, null, null, List.of(HEM)),
            new GarmentOpening("hem", "chest", 880.0, 2, STRAIGHT, null, null, List.of(HEM))),
        "The pieces were laid along the cloth to save some of it.",
        Evening.ALL.get(4).stamp(110));
  }

  private GarmentSheet sweatshirt() {
    return new GarmentSheet(
        Ids.next(),
        room.row(DemoStudent.ALL.get(10)).id(),
        "Grey sweatshirt with a neckband",
        "loose-top",
        room.row(DemoCloth.TERRY).id(),
        Grain.COURSE,
        "day",
        new PatternAsks(null, null, 15.0),
        new GarmentSewing(
            new StitchChoice(MachineKind.OVERLOCKER, "504", null, 2.5), 7.0, false, true),
        List.of(new GarmentGirth("chest", 1080, 2), new GarmentGirth("hip", 1060, 2)),
        List.of(
            new GarmentOpening(
                "neckline",
                "head",
                520.0,
                2,
                "crew",
                0.75,
                20.0,
                List.of(SEAM, new GarmentEdge("band", null, null))),
            new GarmentOpening("sleeve-hem", "hand", 230.0, 1, STRAIGHT, null, null, List.of(HEM)),
            new GarmentOpening("hem", "chest", 1060.0, 2, STRAIGHT, null, null, List.of(HEM))),
        "",
        Evening.ALL.get(5).stamp(90));
  }
}
