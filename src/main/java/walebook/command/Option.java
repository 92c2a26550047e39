package walebook.command;

/**
 * An option of a command, or a word that follows it.
 *
 * @param name without the two hyphens
 * @param label what stands for its value in the help; empty for a flag
 * @param says key of the sentence that explains it
 */
record Option(String name, String label, String says, boolean required, boolean many) {
  static Option of(String name, String label, String says) {
    return new Option(name, label, says, false, false);
  }

  static Option needed(String name, String label, String says) {
    return new Option(name, label, says, true, false);
  }

  static Option many(String name, String label, String says) {
    return new Option(name, label, says, false, true);
  }

  static Option flag(String name, String says) {
    return new Option(name, "", says, false, false);
  }

  boolean isFlag() {
    return label.isEmpty();
  }
}
