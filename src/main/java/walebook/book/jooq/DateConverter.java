package walebook.book.jooq;

import java.time.LocalDate;
import org.jooq.impl.AbstractConverter;
import org.jspecify.annotations.NullUnmarked;

/** Dates as ISO text, since a STRICT table has no date type. */
@NullUnmarked
public final class DateConverter extends AbstractConverter<String, LocalDate> {
  public DateConverter() {
    super(String.class, LocalDate.class);
  }

  @Override
  public LocalDate from(String text) {
    return text == null ? null : LocalDate.parse(text);
  }

  @Override
  public String to(LocalDate date) {
    return date == null ? null : date.toString();
  }
}
