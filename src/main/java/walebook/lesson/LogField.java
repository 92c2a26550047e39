package walebook.lesson;

import walebook.record.Keyed;

/** What a lesson asks a student to write down. */
public enum LogField implements Keyed {
  CLOTH("cloth"),
  GRAIN("grain"),
  LAYERS("layers"),
  MACHINE("machine"),
  STITCH("stitch"),
  WIDTH("width"),
  LENGTH("length"),
  NEEDLE("needle"),
  THREAD("thread"),
  PRESSURE("pressure"),
  TENSION("tension"),
  DIFFERENTIAL_FEED("differential-feed"),
  STABILISER("stabiliser"),
  HEM_METHOD("hem-method"),
  GAUGE("gauge"),
  EDGE_BEFORE("edge-before"),
  EDGE_SEWN("edge-sewn"),
  EDGE_PRESSED("edge-pressed"),
  STRETCHED("stretched"),
  PULL("pull"),
  BROKE("broke"),
  RELEASED("released"),
  APPEARANCE("appearance"),
  FAULTS("faults"),
  OUTCOME("outcome"),
  NOTE("note"),
  MINUTES("minutes"),
  PHOTO("photo");

  private final String key;

  LogField(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
