package walebook.seam;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A piece with a fault, as far as the likely causes and the next attempt ask.
 *
 * @param traits what is known of it
 * @param set what each factor is set to, as it would be typed; without those that are not known
 * @param lacking factors that its stitch or machine does not have
 * @param stitches keys of the stitches that the room can sew, those of the piece's own machine
 *     first
 * @param needleSizes in Nm, smallest first
 * @param feedMost the machine's largest differential feed; null when its card does not say
 * @param tried what each factor was set to in the attempts so far
 * @param triedByHand what was changed by hand in them, in the words of the remedies
 */
public record PieceAtHand(
    Map<Trait, Known> traits,
    Map<Factor, String> set,
    Set<Factor> lacking,
    List<String> stitches,
    List<Integer> needleSizes,
    @Nullable Double feedMost,
    Map<Factor, Set<String>> tried,
    Set<String> triedByHand) {
  public PieceAtHand {
    traits = Map.copyOf(traits);
    set = Map.copyOf(set);
    lacking = Set.copyOf(lacking);
    stitches = List.copyOf(stitches);
    needleSizes = needleSizes.stream().sorted().toList();
    tried = Map.copyOf(tried);
    triedByHand = Set.copyOf(triedByHand);
  }

  /** What a factor is set to; empty when it is not known. */
  String at(Factor factor) {
    return set.getOrDefault(factor, "");
  }

  boolean wasTried(Factor factor, String value) {
    return tried.getOrDefault(factor, Set.of()).contains(value);
  }
}
