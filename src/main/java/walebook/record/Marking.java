package walebook.record;

/** What a piece is marked for, 0 to 3 each. */
public enum Marking implements Keyed {
  CHOICE("choice"),
  TECHNIQUE("technique"),
  PERFORMANCE("performance"),
  FINISH("finish"),
  /** Record and reasoning: a failed piece well explained passes here. */
  REASONING("reasoning");

  /** The highest mark. */
  public static final int MOST = 3;

  /** From this mark on it is passed; common practice: sound, with small things to mend. */
  public static final int PASS = 2;

  private final String key;

  Marking(String key) {
    this.key = key;
  }

  @Override
  public String key() {
    return key;
  }
}
