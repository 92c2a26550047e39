package walebook.garment;

/** An edge of a garment that must pass over a part of the body. */
public enum OpeningEdge {
  NECKLINE("neckline", "garment.edge.neckline"),
  SLEEVE_HEM("sleeve-hem", "garment.edge.sleeve-hem"),
  HEM("hem", "garment.edge.hem"),
  WAIST_EDGE("waist-edge", "garment.edge.waist-edge"),
  LEG_HEM("leg-hem", "garment.edge.leg-hem"),
  LEG_EDGE("leg-edge", "garment.edge.leg-edge");

  private final String key;
  private final String sayKey;

  OpeningEdge(String key, String sayKey) {
    this.key = key;
    this.sayKey = sayKey;
  }

  /** The word used in tables and files. */
  public String key() {
    return key;
  }

  /** The key of its name in the bundle. */
  public String sayKey() {
    return sayKey;
  }
}
