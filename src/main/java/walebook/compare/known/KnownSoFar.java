package walebook.compare.known;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.compare.FairComparison;
import walebook.record.Grain;
import walebook.statistics.Proportion;
import walebook.statistics.Summary;

/**
 * What is known of a cloth and a method over all classes and terms asked about.
 *
 * @param stretches what is known of the cloth's stretch, by grain; empty when several cloths were
 *     asked about
 * @param classes the same question class by class, the earliest first
 * @param together all classes in one, allowing for who sewed
 */
public record KnownSoFar(
    Map<Grain, ClothStretch> stretches, List<ClassLine> classes, FairComparison together) {

  /**
   * What one class says.
   *
   * @param book the book's name
   * @param starts the term's first day
   * @param mean of the plain values; null for a rate, without values, and where some only held
   * @param median by the product-limit estimate; null unless the outcome is a seam's
   * @param held how many of those pulled held; null unless the outcome is a seam's or the rate
   */
  public record ClassLine(
      String book,
      String className,
      String term,
      LocalDate starts,
      int pieces,
      int students,
      int setAside,
      @Nullable Summary mean,
      @Nullable Double median,
      @Nullable Proportion held) {}

  public KnownSoFar {
    stretches = Map.copyOf(stretches);
    classes = List.copyOf(classes);
  }
}
