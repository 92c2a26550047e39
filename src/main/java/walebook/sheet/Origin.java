package walebook.sheet;

import walebook.record.Keyed;

/** How a column's values came about; each has a sentence on the working and one on the source. */
public enum Origin implements Keyed {
  TYPED("typed"),
  CODE("code"),
  CALLED("called"),
  SAVED("saved"),
  LATEST("latest"),
  TAGS("tags"),
  HARDEST_PULL("hardest-pull"),
  ROOM("room"),
  PERSON("person"),
  REMARK("remark"),
  AUTHOR("author"),
  COUNT("count"),
  DIAL_CARD("dial-card"),
  COUNTING_PULL("counting-pull"),
  SEAM_STRETCH("seam-stretch"),
  SEAM_SHARE("seam-share"),
  CLOTH_STRETCH("cloth-stretch"),
  CLOTH_UNCERTAINTY("cloth-uncertainty"),
  READING("reading"),
  WASH("wash"),
  GROWTH("growth"),
  RECOVERY("recovery"),
  EDGE_CHANGE("edge-change"),
  FAULT("fault"),
  PLAN("plan"),
  SETTING("setting"),
  ONE_CHANGE("one-change"),
  HELD_SHARE("held-share"),
  WILSON("wilson"),
  OF_GAVE("of-gave"),
  MEDIAN("median"),
  MEAN("mean"),
  CHART("chart"),
  WRITTEN("written"),
  ODD("odd"),
  OUTCOMES("outcomes"),
  UNIT("unit"),
  FAIR_SETTING("fair-setting"),
  FAIR("fair"),
  FAIR_INTERVAL("fair-interval"),
  KIT("kit"),
  CUTTING("cutting"),
  PRICE("price"),
  COST("cost"),
  GARMENT("garment"),
  MARKED("marked"),
  PIECE_RESULT("piece-result"),
  COVERAGE("coverage"),
  EXPLAINED("explained");

  private final String key;

  Origin(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
