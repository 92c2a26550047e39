package walebook.garment;

import walebook.working.Caution;
import walebook.working.Message;

/** The cautions that belong to garments; each is a row of the table of cautions too. */
public enum GarmentCaution {
  TIGHT("tight-garment", "garment.caution.tight-garment"),
  CHILD_NECK("child-neckline", "garment.caution.child-neckline"),
  CORDS("cords", "garment.caution.cords"),
  NIGHTWEAR("nightwear", "garment.caution.nightwear"),
  SMALL_PARTS("small-parts", "garment.caution.small-parts"),
  ELASTIC("latex", "garment.caution.latex"),
  TIGHT_ELASTIC("elastic-tight", "garment.caution.elastic-tight"),
  MEDICAL("compression-medical", "garment.caution.compression-medical"),
  OVERLOCKER("overlocker", "garment.caution.overlocker");

  private final String key;
  private final String sayKey;

  GarmentCaution(String key, String sayKey) {
    this.key = key;
    this.sayKey = sayKey;
  }

  /** Its key in the table of cautions. */
  public String key() {
    return key;
  }

  /** As it stands in a working. */
  public Caution caution() {
    return new Caution(key, Message.of(sayKey));
  }
}
