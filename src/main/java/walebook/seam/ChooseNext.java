package walebook.seam;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.working.Message;

/** Turns a remedy into one change of a piece's settings, or says why it is passed over. */
final class ChooseNext {
  /** Tension and pressure in the order of their dials. */
  private static final List<String> STEPS = List.of("lower", "normal", "higher");

  // Common practice: beyond these a class's machines sew badly or not at all.
  private static final double SHORTEST_MM = 0.5;
  private static final double LONGEST_MM = 5;
  private static final double NARROWEST_MM = 0.5;
  private static final double WIDEST_MM = 7;
  private static final double LEAST_FEED = 0.5;
  private static final double MOST_FEED = 2.3;

  /**
   * What came of a remedy: one of the two.
   *
   * @param next the change
   * @param whyNot why it is passed over
   */
  record Choice(@Nullable NextTry next, @Nullable Message whyNot) {}

  private ChooseNext() {}

  static Choice of(Remedy remedy, PieceAtHand piece) {
    Factor factor = remedy.factor();
    if (piece.lacking().contains(factor)) {
      String why = factor == Factor.PLATE ? "seam.next.plate" : "seam.next.lacking";
      return passed(Message.of(why, remedy.says()));
    }
    return switch (factor) {
      case WIDTH -> sized(remedy, piece, NARROWEST_MM, WIDEST_MM);
      case LENGTH -> sized(remedy, piece, SHORTEST_MM, LONGEST_MM);
      case DIFFERENTIAL_FEED -> {
        Double most = piece.feedMost();
        yield sized(remedy, piece, LEAST_FEED, most == null ? MOST_FEED : most);
      }
      case NEEDLE_SIZE -> needle(remedy, piece);
      case TENSION_TOP, PRESSURE -> step(remedy, piece);
      case STITCH -> stitch(remedy, piece);
      case NEEDLE_POINT, THREAD, STABILISER -> exchanged(remedy, piece);
      default -> byHand(remedy, piece);
    };
  }

  private static Choice sized(Remedy remedy, PieceAtHand piece, double least, double most) {
    Double step = remedy.size();
    String now = piece.at(remedy.factor());
    Double from = now.isEmpty() ? null : number(now);
    if (from == null && remedy.factor() == Factor.DIFFERENTIAL_FEED) {
      from = 1.0;
    }
    if (step == null || from == null) {
      return offer(remedy, piece, "");
    }
    double to = remedy.direction() == Remedy.Direction.UP ? from + step : from - step;
    if (to < least - 1e-9 || to > most + 1e-9) {
      return passed(Message.of("seam.next.at-the-end", remedy.says(), Show.upTo(from, 2)));
    }
    return offer(remedy, piece, Show.upTo(to, 2));
  }

  private static @Nullable Double number(String typed) {
    try {
      return Double.valueOf(typed.replace(',', '.'));
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static Choice needle(Remedy remedy, PieceAtHand piece) {
    Double now = number(piece.at(Factor.NEEDLE_SIZE));
    if (now == null) {
      return offer(remedy, piece, "");
    }
    List<Integer> sizes = usual(piece.needleSizes());
    boolean up = remedy.direction() == Remedy.Direction.UP;
    Integer next =
        up
            ? sizes.stream().filter(each -> each > now).findFirst().orElse(null)
            : sizes.stream().filter(each -> each < now).reduce((a, b) -> b).orElse(null);
    return next == null
        ? passed(Message.of("seam.next.at-the-end", remedy.says(), piece.at(Factor.NEEDLE_SIZE)))
        : offer(remedy, piece, String.valueOf(next));
  }

  /** Sizes that shops sell for household machines: the odd ones of the table are rare. */
  private static List<Integer> usual(List<Integer> sizes) {
    return sizes.stream().filter(each -> each % 10 == 0 || each == 75 || each == 65).toList();
  }

  /** Unless it is noted otherwise, a dial stands at normal. */
  private static Choice step(Remedy remedy, PieceAtHand piece) {
    int at = STEPS.indexOf(piece.at(remedy.factor()));
    int from = at < 0 ? STEPS.indexOf("normal") : at;
    int to = remedy.direction() == Remedy.Direction.UP ? from + 1 : from - 1;
    return to < 0 || to >= STEPS.size()
        ? passed(
            Message.of(
                "seam.next.at-the-end",
                remedy.says(),
                Message.name("common.choice." + STEPS.get(from))))
        : offer(remedy, piece, STEPS.get(to));
  }

  private static Choice stitch(Remedy remedy, PieceAtHand piece) {
    if (remedy.stitches().isEmpty()) {
      return offer(remedy, piece, "");
    }
    boolean sewn = false;
    for (Remedy.Target each : remedy.stitches()) {
      sewn |= each.stitch().equals(piece.at(Factor.STITCH));
    }
    if (sewn) {
      return passed(Message.of("seam.next.already", remedy.says()));
    }
    // The machine that the piece was sewn on comes first: one change, not two.
    for (String can : piece.stitches()) {
      for (Remedy.Target each : remedy.stitches()) {
        if (each.stitch().equals(can)) {
          return offer(remedy, piece, can, piece.at(Factor.WIDTH).isEmpty() ? each.width() : "");
        }
      }
    }
    return passed(Message.of("seam.next.no-machine", remedy.says()));
  }

  private static Choice exchanged(Remedy remedy, PieceAtHand piece) {
    return piece.at(remedy.factor()).equals(remedy.step())
        ? passed(Message.of("seam.next.already", remedy.says()))
        : offer(remedy, piece, remedy.step());
  }

  private static Choice byHand(Remedy remedy, PieceAtHand piece) {
    return piece.triedByHand().contains(remedy.says())
        ? passed(Message.of("seam.next.tried", remedy.says()))
        : new Choice(new NextTry(remedy, "", "", ""), null);
  }

  private static Choice offer(Remedy remedy, PieceAtHand piece, String to) {
    return offer(remedy, piece, to, "");
  }

  private static Choice offer(Remedy remedy, PieceAtHand piece, String to, String width) {
    if (!to.isEmpty() && piece.wasTried(remedy.factor(), to)) {
      return passed(Message.of("seam.next.tried", remedy.says()));
    }
    return new Choice(new NextTry(remedy, piece.at(remedy.factor()), to, width), null);
  }

  private static Choice passed(Message why) {
    return new Choice(null, why);
  }
}
