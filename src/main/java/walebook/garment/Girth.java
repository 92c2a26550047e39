package walebook.garment;

/** A girth of the body that a garment goes round or an opening passes over. */
public enum Girth {
  HEAD("head", "garment.girth.head"),
  NECK("neck", "garment.girth.neck"),
  NECK_BASE("neck-base", "garment.girth.neck-base"),
  CHEST("chest", "garment.girth.chest"),
  WAIST("waist", "garment.girth.waist"),
  HIP("hip", "garment.girth.hip"),
  THIGH("thigh", "garment.girth.thigh"),
  CALF("calf", "garment.girth.calf"),
  ANKLE("ankle", "garment.girth.ankle"),
  HEEL("heel", "garment.girth.heel"),
  FOOT("foot", "garment.girth.foot"),
  UPPER_ARM("upper-arm", "garment.girth.upper-arm"),
  WRIST("wrist", "garment.girth.wrist"),
  HAND("hand", "garment.girth.hand");

  private final String key;
  private final String sayKey;

  Girth(String key, String sayKey) {
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
