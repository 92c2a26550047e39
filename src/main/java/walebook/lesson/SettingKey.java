package walebook.lesson;

import walebook.record.Keyed;

/** A setting that a plan fixes or changes, as pack.yaml names it. */
public enum SettingKey implements Keyed {
  CLOTH("cloth"),
  GRAIN("grain"),
  LAYERS("layers"),
  METHOD("method"),
  MACHINE("machine"),
  STITCH_TYPE("stitch_type"),
  WIDTH("width"),
  LENGTH("length"),
  NEEDLE_POINT("needle_point"),
  NEEDLE_NM("needle_nm"),
  STABILISER("stabiliser"),
  HEM_METHOD("hem_method"),
  NEED_PERCENT("need_percent");

  private final String key;

  SettingKey(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
