package walebook.act.piece;

import walebook.record.Keyed;

/**
 * The fields of the log form, in the order of the hands: the cloth, the machine, the measure, what
 * was seen. The same fields are the options of the command line and the columns of a record card.
 */
public enum PieceField implements Keyed {
  CLOTH("cloth", Group.CLOTH, Kind.CHOICE),
  GRAIN("grain", Group.CLOTH, Kind.CHOICE),
  LAYERS("layers", Group.CLOTH, Kind.WHOLE),
  METHOD("method", Group.MACHINE, Kind.CHOICE),
  MACHINE("machine", Group.MACHINE, Kind.CHOICE),
  STITCH("stitch", Group.MACHINE, Kind.CHOICE),
  DIAL_WIDTH("dial-width", Group.MACHINE, Kind.NUMBER),
  DIAL_LENGTH("dial-length", Group.MACHINE, Kind.NUMBER),
  NEEDLE_POINT("needle-point", Group.MACHINE, Kind.CHOICE),
  NEEDLE_NM("needle-nm", Group.MACHINE, Kind.WHOLE),
  HEM_METHOD("hem-method", Group.MACHINE, Kind.TEXT),
  DIFFERENTIAL_FEED("differential-feed", Group.MACHINE, Kind.NUMBER),
  THREAD("thread", Group.MORE, Kind.TEXT),
  PRESSURE("pressure", Group.MORE, Kind.CHOICE),
  TENSION("tension", Group.MORE, Kind.CHOICE),
  STABILISER("stabiliser", Group.MORE, Kind.TEXT),
  SEWN_WIDTH("sewn-width", Group.MORE, Kind.NUMBER),
  SEWN_LENGTH("sewn-length", Group.MORE, Kind.NUMBER),
  OTHER_CHANGE("other-change", Group.MORE, Kind.TEXT),
  GAUGE("gauge", Group.MEASURE, Kind.LENGTH),
  EDGE_BEFORE("edge-before", Group.MEASURE, Kind.LENGTH),
  EDGE_SEWN("edge-sewn", Group.MEASURE, Kind.LENGTH),
  EDGE_PRESSED("edge-pressed", Group.MEASURE, Kind.LENGTH),
  END("end", Group.MEASURE, Kind.CHOICE),
  END_LENGTH("end-length", Group.MEASURE, Kind.LENGTH),
  END_2("end-2", Group.MEASURE, Kind.CHOICE),
  END_LENGTH_2("end-length-2", Group.MEASURE, Kind.LENGTH),
  END_3("end-3", Group.MEASURE, Kind.CHOICE),
  END_LENGTH_3("end-length-3", Group.MEASURE, Kind.LENGTH),
  BROKE("broke", Group.MEASURE, Kind.CHOICE),
  RELEASED("released", Group.MEASURE, Kind.LENGTH),
  NEED("need", Group.MEASURE, Kind.NUMBER),
  REST("rest", Group.HOW, Kind.NUMBER),
  FOLD("fold", Group.HOW, Kind.CHOICE),
  PULL("pull", Group.HOW, Kind.CHOICE),
  LOAD("load", Group.HOW, Kind.NUMBER),
  HOLD("hold", Group.HOW, Kind.NUMBER),
  MEASURED_BY("measured-by", Group.HOW, Kind.CHOICE),
  SEWN_ON("sewn-on", Group.HOW, Kind.DATE),
  MEASURED_ON("measured-on", Group.HOW, Kind.DATE),
  GRADE("grade", Group.SEEN, Kind.WHOLE),
  FAULTS("faults", Group.SEEN, Kind.TEXT),
  OUTCOME("outcome", Group.SEEN, Kind.CHOICE),
  REMARK("remark", Group.SEEN, Kind.TEXT),
  MINUTES("minutes", Group.SEEN, Kind.MINUTES);

  /** The groups of the form; MORE and HOW are folded away at first. */
  public enum Group {
    CLOTH,
    MACHINE,
    MORE,
    MEASURE,
    HOW,
    SEEN
  }

  /** What is typed or chosen. */
  public enum Kind {
    CHOICE,
    LENGTH,
    NUMBER,
    WHOLE,
    TEXT,
    DATE,
    MINUTES
  }

  private final String key;
  private final Group group;
  private final Kind kind;

  PieceField(String key, Group group, Kind kind) {
    this.key = key;
    this.group = group;
    this.kind = kind;
  }

  @Override
  public String key() {
    return key;
  }

  public Group group() {
    return group;
  }

  public Kind kind() {
    return kind;
  }

  /** True for what is set on a machine or cloth before sewing: what one change can change. */
  public boolean isSetting() {
    return group == Group.CLOTH || group == Group.MACHINE || group == Group.MORE;
  }
}
