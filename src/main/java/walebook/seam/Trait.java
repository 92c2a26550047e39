package walebook.seam;

/** Something known of a piece that may speak for or against a cause of a fault. */
public enum Trait {
  /** Whether the stitch's thread path gives along the seam: {@code yes} or {@code no}. */
  STITCH_GIVES("stitch-gives", "seam.trait.stitch-gives"),
  /** The stitch's key in the table of stitch types. */
  STITCH("stitch", "seam.trait.stitch"),
  /** Sewn width in mm. */
  WIDTH("width", "seam.trait.width"),
  /** Sewn length of one stitch in mm. */
  LENGTH("length", "seam.trait.length"),
  NEEDLE_POINT("needle-point", "seam.trait.needle-point"),
  /** Nm: hundredths of a millimetre. */
  NEEDLE_SIZE("needle-size", "seam.trait.needle-size"),
  /** {@code cotton}, {@code polyester}, {@code textured} or another word. */
  THREAD("thread", "seam.trait.thread"),
  /** {@code lower}, {@code normal} or {@code higher}. */
  TENSION("tension", "seam.trait.tension"),
  PRESSURE("pressure", "seam.trait.pressure"),
  /** Front feed's travel over the rear's. */
  FEED("feed", "seam.trait.feed"),
  /** {@code some} or {@code none}. */
  STABILISER("stabiliser", "seam.trait.stabiliser"),
  /** The machine's kind. */
  MACHINE("machine", "seam.trait.machine"),
  LAYERS("layers", "seam.trait.layers"),
  /** The cloth's structure, as in the table of fabric kinds. */
  STRUCTURE("structure", "seam.trait.structure"),
  /** Per cent of the cloth. */
  ELASTANE("elastane", "seam.trait.elastane"),
  /** g/m². */
  MASS("mass", "seam.trait.mass"),
  /** Whether the seam runs along the grain that stretches more: {@code yes} or {@code no}. */
  STRETCHIEST("stretchiest", "seam.trait.stretchiest"),
  /** When it was seen: off the machine, pressed, stretched, washed. */
  SEEN("seen", "seam.trait.seen"),
  /** Where it was seen. */
  PLACE("place", "seam.trait.place");

  private final String key;
  private final String says;

  Trait(String key, String says) {
    this.key = key;
    this.says = says;
  }

  /** The word used in the table. */
  public String key() {
    return key;
  }

  /** The key of its plain name. */
  public String says() {
    return says;
  }
}
