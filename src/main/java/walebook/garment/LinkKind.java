package walebook.garment;

/** What goes round an edge and must stretch with it. */
public enum LinkKind {
  CLOTH("cloth", "garment.link.cloth"),
  SEAM("seam", "garment.link.seam"),
  HEM("hem", "garment.link.hem"),
  INTERFACING("interfacing", "garment.link.interfacing"),
  BAND("band", "garment.link.band"),
  ELASTIC("elastic", "garment.link.elastic");

  private final String key;
  private final String sayKey;

  LinkKind(String key, String sayKey) {
    this.key = key;
    this.sayKey = sayKey;
  }

  /** The word used in files and on the command line. */
  public String key() {
    return key;
  }

  /** The key of its name in the bundle. */
  public String sayKey() {
    return sayKey;
  }
}
