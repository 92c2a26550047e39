package walebook.record;

/**
 * A needle.
 *
 * @param nm blade diameter in hundredths of a millimetre (DIN 5325 metric size)
 */
public record Needle(NeedlePoint point, int nm) {
  public Needle {
    Check.within("nm", nm, 50, 200);
  }
}
