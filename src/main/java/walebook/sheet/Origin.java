package walebook.sheet;

import walebook.record.Keyed;

/** How a column's values came about; each has a sentence on the working and one on the source. */
public enum Origin implements Keyed {
  TYPED("typed"),
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
  CHART("chart"),
  WRITTEN("written"),
  ODD("odd"),
  FAIR("fair"),
  FAIR_INTERVAL("fair-interval"),
  KIT("kit"),
  PRICE("price"),
  COST("cost"),
  GARMENT("garment"),
  MARKED("marked"),
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
