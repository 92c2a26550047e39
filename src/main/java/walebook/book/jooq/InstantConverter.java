package walebook.book.jooq;

import java.time.Instant;
import org.jooq.impl.AbstractConverter;
import org.jspecify.annotations.NullUnmarked;

/** Instants as whole milliseconds since 1970 in UTC. */
@NullUnmarked
public final class InstantConverter extends AbstractConverter<Long, Instant> {
  public InstantConverter() {
    super(Long.class, Instant.class);
  }

  @Override
  public Instant from(Long millis) {
    return millis == null ? null : Instant.ofEpochMilli(millis);
  }

  @Override
  public Long to(Instant instant) {
    return instant == null ? null : instant.toEpochMilli();
  }
}
