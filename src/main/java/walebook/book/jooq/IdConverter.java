package walebook.book.jooq;

import java.util.UUID;
import org.jooq.impl.AbstractConverter;
import org.jspecify.annotations.NullUnmarked;

/** Keys as their 36 letters, so that a person can read and compare them in any tool. */
@NullUnmarked
public final class IdConverter extends AbstractConverter<String, UUID> {
  public IdConverter() {
    super(String.class, UUID.class);
  }

  @Override
  public UUID from(String text) {
    return text == null ? null : UUID.fromString(text);
  }

  @Override
  public String to(UUID id) {
    return id == null ? null : id.toString();
  }
}
