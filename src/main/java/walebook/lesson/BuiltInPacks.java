package walebook.lesson;

import java.util.List;

/** The packs that come with the program, in the order they are taught. */
public final class BuiltInPacks {
  private BuiltInPacks() {}

  /** Every built-in pack; a class path can't be listed, so a test holds this to the folder. */
  public static List<PackSource> all() {
    return List.of(
        new PackInProgram(
            "measuring-stretch",
            List.of(
                "after-the-rest.png",
                "after-the-rest.svg",
                "gauge-on-fold.png",
                "gauge-on-fold.svg",
                "grain-arrows.png",
                "grain-arrows.svg",
                "lesson.md",
                "pack.yaml",
                "stretch-on-rule.png",
                "stretch-on-rule.svg")),
        new PackInProgram(
            "seam-that-stretches",
            List.of(
                "held-or-gave.png",
                "held-or-gave.svg",
                "lesson.md",
                "pack.yaml",
                "ten-stitches.png",
                "ten-stitches.svg",
                "test-piece.png",
                "test-piece.svg",
                "zigzag-to-scale.png",
                "zigzag-to-scale.svg")));
  }
}
