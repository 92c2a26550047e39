package walebook.command;

/** What a command's end tells the program that called it. */
public enum Exit {
  DONE(0),
  /** The input was refused; problems are on standard error. */
  REFUSED(1),
  /** The command was not written as it should be. */
  USAGE(2),
  /** The book can't be opened or saved. */
  NO_BOOK(3);

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  public int code() {
    return code;
  }
}
