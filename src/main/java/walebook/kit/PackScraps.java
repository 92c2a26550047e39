package walebook.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** Looks for a way to cut pieces out of scraps, the grain of both straight. */
public final class PackScraps {
  private static final double WORK = 2e7;
  private static final int MOST_ROUNDS = 20_000;

  private final List<CutPiece> pieces;
  private final List<Scrap> scraps;
  private final LayPieces lay;
  private final double margin;

  private PackScraps(List<CutPiece> pieces, List<Scrap> scraps, double margin) {
    this.pieces = List.copyOf(pieces);
    this.scraps = List.copyOf(scraps);
    this.margin = margin;
    this.lay = new LayPieces(pieces, margin);
  }

  /** An order of pieces and one of scraps, with the area of what is then left out. */
  private static final class Try {
    final int[] order;
    final int[] turn;
    final double left;

    Try(int[] order, int[] turn, double left) {
      this.order = order;
      this.turn = turn;
      this.left = left;
    }
  }

  /**
   * Answers.
   *
   * @param marginMm kept between two pieces on one scrap
   * @param seed the same seed finds the same plan
   */
  public static Answer<ScrapAnswer> of(
      List<CutPiece> pieces, List<Scrap> scraps, double marginMm, long seed) {
    List<Problem> found = new ArrayList<>();
    int count = pieces.stream().mapToInt(CutPiece::count).sum();
    if (count == 0) {
      found.add(Problem.refuse("kit.no-pieces", Place.field("cut-piece"), "0", "1"));
    } else if (count > ClothToBuy.MOST_PIECES) {
      found.add(
          Problem.refuse(
              "kit.too-many-pieces",
              Place.field("cut-piece"),
              String.valueOf(count),
              String.valueOf(ClothToBuy.MOST_PIECES)));
    }
    if (scraps.isEmpty()) {
      found.add(Problem.refuse("kit.no-scraps", Place.field("scrap"), "", "400 mm x 300 mm"));
    }
    if (!(Double.isFinite(marginMm) && marginMm >= 0)) {
      found.add(
          Problem.refuse("number.negative", Place.field("margin"), Show.mm(marginMm), "5 mm"));
    }
    return found.isEmpty()
        ? Answer.good(new PackScraps(pieces, scraps, marginMm).answer(count, new Random(seed)))
        : Answer.bad(found);
  }

  private ScrapAnswer answer(int count, Random random) {
    Try best = search(count, random);
    int[] used = new int[pieces.size()];
    CuttingPlan[] plans = new CuttingPlan[scraps.size()];
    lay.order(best.order);
    for (int each : best.turn) {
      Scrap scrap = scraps.get(each);
      List<Placed> placed = new ArrayList<>();
      lay.lay(used, scrap.acrossMm(), scrap.alongMm(), placed);
      plans[each] = new CuttingPlan(pieces, scrap.acrossMm(), scrap.alongMm(), margin, placed);
    }
    List<Integer> missing =
        IntStream.range(0, used.length).mapToObj(i -> pieces.get(i).count() - used[i]).toList();
    ScrapAnswer.Outcome outcome =
        best.left == 0
            ? ScrapAnswer.Outcome.COME_OUT
            : isImpossible() ? ScrapAnswer.Outcome.CANNOT : ScrapAnswer.Outcome.NOT_FOUND;
    return new ScrapAnswer(
        outcome, scraps, List.of(plans), missing, working(outcome, count, missing));
  }

  private Try search(int count, Random random) {
    int[] order = PackStrip.largestFirst(pieces);
    List<Integer> smallest = new ArrayList<>(IntStream.range(0, scraps.size()).boxed().toList());
    smallest.sort(Comparator.comparingDouble(each -> scraps.get(each).areaMm2()));
    Try now = tried(order, smallest.stream().mapToInt(Integer::intValue).toArray());
    Collections.reverse(smallest);
    Try other = tried(order, smallest.stream().mapToInt(Integer::intValue).toArray());
    now = other.left < now.left ? other : now;
    Try best = now;
    double each = (double) count * pieces.size() * Math.sqrt(scraps.size());
    int rounds = isImpossible() ? 200 : (int) Math.min(MOST_ROUNDS, WORK / each);
    for (int round = 0; round < rounds && best.left > 0; round++) {
      int[] nextOrder = now.order.clone();
      int[] nextTurn = now.turn.clone();
      if (scraps.size() > 1 && random.nextInt(4) == 0) {
        PackStrip.swap(nextTurn, random);
      } else {
        PackStrip.swap(nextOrder, random);
      }
      Try next = tried(nextOrder, nextTurn);
      if (next.left <= now.left || random.nextInt(200) == 0) {
        now = next;
      }
      best = next.left < best.left ? next : best;
    }
    return best;
  }

  private Try tried(int[] order, int[] turn) {
    int[] used = new int[pieces.size()];
    lay.order(order);
    for (int each : turn) {
      lay.lay(used, scraps.get(each).acrossMm(), scraps.get(each).alongMm(), null);
    }
    double left = 0;
    for (int i = 0; i < used.length; i++) {
      CutPiece piece = pieces.get(i);
      left += (piece.count() - used[i]) * piece.acrossMm() * piece.alongMm();
    }
    return new Try(order, turn, left);
  }

  /** True when it can be seen at once that not all of them come out. */
  private boolean isImpossible() {
    double wanted = pieces.stream().mapToDouble(CutPiece::areaMm2).sum();
    double there = scraps.stream().mapToDouble(Scrap::areaMm2).sum();
    return wanted > there + Skyline.EVEN
        || pieces.stream()
            .anyMatch(
                piece -> scraps.stream().noneMatch(s -> piece.fits(s.acrossMm(), s.alongMm())));
  }

  private Working working(ScrapAnswer.Outcome outcome, int count, List<Integer> missing) {
    double wanted = pieces.stream().mapToDouble(CutPiece::areaMm2).sum() / 100;
    double there = scraps.stream().mapToDouble(Scrap::areaMm2).sum() / 100;
    int out = missing.stream().mapToInt(Integer::intValue).sum();
    String all = String.valueOf(count);
    return Working.named("scraps", Message.of("kit.scraps.title"))
        .step(
            Message.of("kit.scraps.step-area"),
            "Σ a b ≤ Σ A B",
            "%s cm² / %s cm²".formatted(Show.fixed(wanted, 0), Show.fixed(there, 0)))
        .result(Measured.of(count - out, Unit.COUNT))
        .assume(Message.of("kit.assume.scraps-straight"))
        .source(Source.Kind.ESTIMATE, "best fit on a skyline, improved by exchanges")
        .says(
            switch (outcome) {
              case COME_OUT -> Message.of("kit.scraps.come-out", all);
              case CANNOT -> Message.of("kit.scraps.cannot", String.valueOf(out), all);
              case NOT_FOUND -> Message.of("kit.scraps.not-found", String.valueOf(out), all);
            });
  }
}
