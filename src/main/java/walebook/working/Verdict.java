package walebook.working;

/** What a check came to; shown by shape first, word beside, colour last. */
public enum Verdict {
  MET,
  TOO_CLOSE,
  NOT_MET,
  NOT_KNOWN
}
