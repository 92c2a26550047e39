package walebook.record;

import java.util.UUID;

/**
 * Someone who sews.
 *
 * @param alias what stands for the name on a projector and in exports, such as {@code S07}
 */
public record Student(UUID id, String name, String alias, Tier tier, Stamp stamp) {
  public Student {
    Check.text("name", name);
    Check.text("alias", alias);
  }
}
