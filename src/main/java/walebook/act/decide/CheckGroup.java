package walebook.act.decide;

import java.util.List;

/** What a class would look under for a calculation, with those that belong there in order. */
public enum CheckGroup {
  CLOTH(
      "act.decide.group.cloth",
      "stretch growth recovery repeats enough-stretch balance mass mass-units "
          + "wash-change cut-length"),
  STITCH("act.decide.group.stitch", "zigzag zigzag-width stitch-density"),
  SEAM("act.decide.group.seam", "seam-stretch seam-share seam-check edge-change seam-fit"),
  NOTIONS(
      "act.decide.group.notions",
      "thread-use thread-unravelled needle needle-size needle-from-older"),
  FIT("act.decide.group.fit", "ease stretch-used pattern-gauge which-way opening"),
  ALLOWANCE("act.decide.group.allowance", "allowance curved-edge neckline-change overlocker"),
  BAND("act.decide.group.band", "band band-flat band-over quarter-marks segment-marks"),
  DRAFT("act.decide.group.draft", "locked-span negative-ease length-lost wash-first");

  private final String sayKey;
  private final String names;

  CheckGroup(String sayKey, String names) {
    this.sayKey = sayKey;
    this.names = names;
  }

  /** The key of its name in the bundle. */
  public String sayKey() {
    return sayKey;
  }

  /** Names of the calculations that stand here, in the order a lesson takes them. */
  public List<String> names() {
    return List.of(names.split(" "));
  }
}
