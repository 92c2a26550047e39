package walebook.record;

/**
 * A girth of the finished garment.
 *
 * @param girth key of the girth, such as {@code chest}
 * @param finishedMm as the pattern draws it, mm
 * @param seams how many seams cross it
 */
public record GarmentGirth(String girth, double finishedMm, int seams) {
  public GarmentGirth {
    Check.text("girth", girth);
    Check.positive("finishedMm", finishedMm);
    Check.within("seams", seams, 0, 20);
  }
}
