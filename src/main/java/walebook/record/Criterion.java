package walebook.record;

import java.util.UUID;

/**
 * Something that a course asks for, in the words of its papers as the tutor typed them.
 *
 * @param code short, such as {@code 2.1}; each once in a class
 * @param place its place in the list, from 1
 */
public record Criterion(UUID id, UUID classId, String code, String says, int place, Stamp stamp) {
  public Criterion {
    Check.text("code", code);
    Check.text("says", says);
    Check.within("place", place, 1, 10_000);
  }
}
