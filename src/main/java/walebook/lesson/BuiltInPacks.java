package walebook.lesson;

import java.util.ArrayList;
import java.util.List;

/** The packs that come with the program, in the order they are taught. */
public final class BuiltInPacks {
  private BuiltInPacks() {}

  /** Every built-in pack; a class path can't be listed, so a test holds this to the folder. */
  public static List<PackSource> all() {
    return List.of(
        pack(
            "measuring-stretch",
            "after-the-rest",
            "gauge-on-fold",
            "grain-arrows",
            "stretch-on-rule"),
        pack("do-we-measure-alike", "by-the-clock", "nine-readings", "one-length"),
        pack("what-a-pattern-asks", "met-or-not", "pattern-gauge", "three-answers"),
        pack(
            "seam-that-stretches", "held-or-gave", "ten-stitches", "test-piece", "zigzag-to-scale"),
        pack("needles-for-knits", "blade-sizes", "count-skips", "three-points"),
        pack(
            "overlocker-and-allowance",
            "neckline-smaller",
            "needle-to-knife",
            "two-ways-and-a-wrong-one"),
        pack("ease-and-fit", "body-and-garment", "share-used", "wider-and-shorter"),
        pack("which-way-round", "leg-two-ways", "over-the-heel", "three-ways"),
        pack("hems-that-stretch", "flat-rippled-tunnelled", "hem-piece", "hem-with-tape"),
        pack("bands-that-lie-flat", "flat-ratio", "half-neckline", "three-bands"),
        pack(
            "details-that-keep-the-stretch",
            "detail-piece",
            "one-go-or-one-by-one",
            "what-is-left"),
        pack("garment-from-scraps", "on-the-scrap", "one-warmer", "weakest-link"));
  }

  /** A pack whose every drawing is there twice, to scale and as the window shows it. */
  private static PackSource pack(String name, String... drawings) {
    List<String> files = new ArrayList<>(List.of("lesson.md", "pack.yaml"));
    for (String drawing : drawings) {
      files.add(drawing + ".png");
      files.add(drawing + ".svg");
    }
    return new PackInProgram(name, files);
  }
}
