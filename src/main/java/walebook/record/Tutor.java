package walebook.record;

import java.util.UUID;

/** Someone who teaches. */
public record Tutor(UUID id, String name, Stamp stamp) {
  public Tutor {
    Check.text("name", name);
  }
}
