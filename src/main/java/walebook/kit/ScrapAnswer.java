package walebook.kit;

import java.util.List;
import walebook.working.Message;
import walebook.working.Working;

/**
 * Whether pieces come out of scraps.
 *
 * @param scraps in the order given
 * @param plans what lies on each scrap
 * @param missing how many of each kind of piece did not come out
 */
public record ScrapAnswer(
    Outcome outcome,
    List<Scrap> scraps,
    List<CuttingPlan> plans,
    List<Integer> missing,
    Working working) {

  /** How it ended. */
  public enum Outcome {
    /** All of them do; the plans show how. */
    COME_OUT,
    /** They can't: there is too little cloth, or a piece fits no scrap. */
    CANNOT,
    /** No way was found, which does not prove that there is none. */
    NOT_FOUND
  }

  public ScrapAnswer {
    scraps = List.copyOf(scraps);
    plans = List.copyOf(plans);
    missing = List.copyOf(missing);
  }

  /** The answer in one sentence. */
  public Message says() {
    return working.says();
  }
}
