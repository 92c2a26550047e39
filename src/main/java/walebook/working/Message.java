package walebook.working;

import java.util.List;
import java.util.Objects;

/**
 * A sentence for people, as its key in the bundle and the arguments that go into it.
 *
 * @param key dotted, beginning with the room, such as {@code cloth.stretch.title}
 * @param args texts already formed (numbers by {@code quantity.Show}); placed at {0}, {1} …
 */
public record Message(String key, List<String> args) {
  public Message {
    Objects.requireNonNull(key, "key");
    args = List.copyOf(args);
  }

  public static Message of(String key, String... args) {
    return new Message(key, List.of(args));
  }

  /** An argument that is itself a key: its own sentence is put in its place. */
  public static String name(String key) {
    return "@" + key;
  }
}
