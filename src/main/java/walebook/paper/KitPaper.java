package walebook.paper;

import java.util.List;
import walebook.kit.Kit;
import walebook.quantity.Unit;

/**
 * A kit as a list to shop by.
 *
 * @param title the lesson's
 * @param when the class and the day of the lesson; empty where neither is known yet
 * @param room what the room needs once
 * @param unit lengths of cloth are shown in
 */
public record KitPaper(Kit kit, String title, String when, List<String> room, Unit unit) {
  public KitPaper {
    room = List.copyOf(room);
  }
}
