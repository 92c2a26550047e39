package walebook.record;

import java.util.UUID;
import walebook.quantity.Unit;

/**
 * What a book is called.
 *
 * @param invented true for a demo book: everything in it is made up, and it says so
 * @param lengthUnit the unit its people work in: mm, cm or in
 */
public record BookInfo(UUID id, String name, boolean invented, Unit lengthUnit, Stamp stamp) {
  public BookInfo {
    Check.text("name", name);
    if (!lengthUnit.isLength()) {
      throw new IllegalArgumentException("lengthUnit must be a length: " + lengthUnit);
    }
  }
}
