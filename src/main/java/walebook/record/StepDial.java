package walebook.record;

/** What a machine's dial reads for lower, normal and higher; empty where it was not noted. */
public record StepDial(String lower, String normal, String higher) {
  public static final StepDial UNKNOWN = new StepDial("", "", "");

  public String at(Step step) {
    return switch (step) {
      case LOWER -> lower;
      case NORMAL -> normal;
      case HIGHER -> higher;
    };
  }
}
