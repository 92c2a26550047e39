package walebook.garment;

import static walebook.garment.GarmentInputs.OPENING;
import static walebook.garment.GarmentInputs.OVER;
import static walebook.working.Input.Kind.NUMBER;
import static walebook.working.Input.Kind.PERCENT;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.working.Calculation;
import walebook.working.Given;
import walebook.working.Input;
import walebook.working.Message;
import walebook.working.Working;

/** The check of an opening, by name: each link by how it is known and how far it stretches. */
final class OpeningCalculation {
  private static final List<String> KNOWN_BY = List.of("none", "gave", "held", "model", "unknown");

  private OpeningCalculation() {}

  static Calculation of(GarmentRows rows) {
    List<Input> inputs = new ArrayList<>();
    inputs.add(OPENING);
    inputs.add(OVER);
    inputs.add(
        Input.choice(
            "garment",
            rows.margins().stream().map(OpeningMargin::key).toList(),
            Message.of("garment.input.margin-kind")));
    inputs.add(Input.optional("margin", NUMBER, Message.of("garment.input.margin")));
    inputs.add(Input.optional("cloth", PERCENT, Message.of("garment.input.link-cloth")));
    inputs.add(Input.optional("seam", PERCENT, Message.of("garment.input.link-seam")));
    inputs.add(Input.choice("seam-by", KNOWN_BY, Message.of("garment.input.known-by")));
    inputs.add(Input.optional("hem", PERCENT, Message.of("garment.input.link-hem")));
    inputs.add(Input.choice("hem-by", KNOWN_BY, Message.of("garment.input.known-by")));
    inputs.add(Input.optional("interfacing", PERCENT, Message.of("garment.input.link-tape")));
    inputs.add(Input.choice("interfacing-by", KNOWN_BY, Message.of("garment.input.known-by")));
    inputs.add(Input.optional("band", PERCENT, Message.of("garment.input.link-band")));
    inputs.add(Input.choice("band-by", KNOWN_BY, Message.of("garment.input.known-by")));
    inputs.add(Input.optional("elastic", PERCENT, Message.of("garment.input.link-elastic")));
    inputs.add(Input.choice("elastic-by", KNOWN_BY, Message.of("garment.input.known-by")));
    inputs.add(GarmentInputs.STRETCH_U);
    return new Calculation(
        "opening", Message.of("garment.opening.title"), inputs, given -> run(given, rows));
  }

  private static Answer<Working> run(Given given, GarmentRows rows) {
    Double typed = given.numberOrNull("margin");
    double margin = typed == null ? rows.margin(given.word("garment")) : typed;
    double opening = given.number("opening");
    double over = given.number("over");
    GarmentNeeds needs =
        new GarmentNeeds()
            .girth("opening", opening)
            .girth("over", over)
            .notNegative("margin", margin, "10")
            .notNegative("stretch-u", given.number("stretch-u"), "0.5");
    for (LinkKind kind : LinkKind.values()) {
      Double percent = given.numberOrNull(kind.key());
      if (percent != null) {
        needs.notNegative(kind.key(), percent, "50 %");
      }
    }
    return needs.then(
        () -> Opening.of(new OpeningQuestion(opening, over, margin, links(given))).working());
  }

  private static List<Link> links(Given given) {
    List<Link> links = new ArrayList<>();
    double u = given.number("stretch-u");
    Double cloth = given.numberOrNull("cloth");
    links.add(
        cloth == null ? Link.unknown(LinkKind.CLOTH) : Link.gave(LinkKind.CLOTH, cloth, u, 0, 0));
    for (LinkKind kind : LinkKind.values()) {
      if (kind != LinkKind.CLOTH) {
        Link link = link(kind, given.numberOrNull(kind.key()), given.word(kind.key() + "-by"), u);
        if (link != null) {
          links.add(link);
        }
      }
    }
    return links;
  }

  /** A figure without a word on how it is known counts as a test piece that gave. */
  private static @Nullable Link link(
      LinkKind kind, @Nullable Double percent, String knownBy, double u) {
    if (percent == null) {
      return knownBy.equals("none") ? null : Link.unknown(kind);
    }
    return switch (knownBy) {
      case "held" -> Link.held(kind, percent, u, 0, 0);
      case "model" -> Link.model(kind, percent);
      case "unknown" -> Link.unknown(kind);
      default -> Link.gave(kind, percent, u, 0, 0);
    };
  }
}
