package walebook.act.bring.match;

/**
 * What one column is taken for.
 *
 * @param field key of a field; empty for a column that is left out
 * @param unit sign of the unit its numbers are in; empty for the usual one
 */
public record ColumnMatch(String field, String unit) {
  public static final ColumnMatch LEFT_OUT = new ColumnMatch("", "");

  public boolean isLeftOut() {
    return field.isEmpty();
  }
}
