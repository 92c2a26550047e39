package walebook.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;

/**
 * The likely causes of a fault in order, given one piece's settings. Those that the settings speak
 * for come first, those that they rule out last; among equals the order of the table holds, which
 * is the order in which causes usually come (common practice). The order is a guide to what to try
 * first, no finding: only the next piece, sewn with one change, tells.
 */
public final class LikelyCauses {
  private LikelyCauses() {}

  /**
   * Puts a fault's causes in order.
   *
   * @param fault the row of the table
   * @param piece what is known of the piece
   * @return every cause of the row, once; a change that an earlier one offers isn't offered again
   */
  public static List<LikelyCause> of(Fault fault, PieceAtHand piece) {
    List<LikelyCause> causes = new ArrayList<>();
    for (Cause each : fault.causes()) {
      causes.add(likely(each, piece));
    }
    // The sort is stable, so that the table's order holds among equals.
    causes.sort(Comparator.comparing(LikelyCause::standing));
    Set<String> offered = new HashSet<>();
    return causes.stream().map(each -> withNext(each, piece, offered)).toList();
  }

  /**
   * The first thing to try: the first remedy of the first cause that is not ruled out.
   *
   * @return null when all of them were tried or none can be done
   */
  public static @Nullable NextTry first(List<LikelyCause> causes) {
    for (LikelyCause each : causes) {
      if (each.standing() != Standing.RULED_OUT && each.next() != null) {
        return each.next();
      }
    }
    return null;
  }

  private static LikelyCause likely(Cause cause, PieceAtHand piece) {
    List<Clue.Weighed> weighed =
        cause.clues().stream().map(clue -> clue.weigh(piece.traits().get(clue.trait()))).toList();
    Standing standing = standing(weighed);
    List<Message> reasons =
        weighed.stream()
            .filter(each -> each.standing() == standing)
            .map(Clue.Weighed::reason)
            .toList();
    return new LikelyCause(
        cause,
        standing,
        reasons.isEmpty() ? List.of(Message.of("seam.clue.none")) : reasons,
        null,
        List.of());
  }

  /** One piece tries a change for every cause it helps against, so it is offered once. */
  private static LikelyCause withNext(LikelyCause likely, PieceAtHand piece, Set<String> offered) {
    List<Message> passedOver = new ArrayList<>();
    NextTry next = null;
    for (Remedy each : likely.cause().remedies()) {
      ChooseNext.Choice choice = ChooseNext.of(each, piece);
      NextTry found = choice.next();
      if (found != null && offered.add(change(found))) {
        next = found;
        break;
      }
      if (found != null) {
        passedOver.add(Message.of("seam.next.above", each.says()));
      } else if (choice.whyNot() != null) {
        passedOver.add(choice.whyNot());
      }
    }
    return new LikelyCause(likely.cause(), likely.standing(), likely.reasons(), next, passedOver);
  }

  /** What two offers have in common when they come to the same piece. */
  private static String change(NextTry next) {
    Remedy remedy = next.remedy();
    return remedy.factor().key() + "=" + (next.to().isEmpty() ? remedy.says() : next.to());
  }

  private static Standing standing(List<Clue.Weighed> weighed) {
    if (weighed.stream().anyMatch(each -> each.standing() == Standing.RULED_OUT)) {
      return Standing.RULED_OUT;
    }
    boolean all = weighed.stream().allMatch(each -> each.standing() == Standing.FITS);
    return all && !weighed.isEmpty() ? Standing.FITS : Standing.OPEN;
  }
}
