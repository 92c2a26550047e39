package walebook.act.bring;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.ColumnUnit;
import walebook.act.bring.match.DayOrder;
import walebook.act.bring.match.DayText;
import walebook.act.piece.PieceField;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.sheet.in.InCell;
import walebook.sheet.in.InRow;
import walebook.sheet.in.SerialDay;

/** The cells of one row as a person would have typed them into the fields of a form. */
final class CellReader {
  /** Days from 2000 to 2100 as numbers, where a column of days lost its look. */
  private static final double FIRST_SERIAL = 36_526;

  private static final double LAST_SERIAL = 73_051;
  private static final double MINUTES_A_DAY = 1440;
  private static final double MINUTES_AN_HOUR = 60;

  private final BringPlan plan;
  private final Map<String, Integer> places;
  private final DayOrder order;
  private final InRow row;
  private final List<Problem> problems = new ArrayList<>();

  CellReader(BringPlan plan, Map<String, Integer> places, DayOrder order, InRow row) {
    this.plan = plan;
    this.places = places;
    this.order = order;
    this.row = row;
  }

  List<Problem> problems() {
    return problems;
  }

  boolean has(String field) {
    return places.containsKey(field);
  }

  /**
   * What stands in a field's column, in the form's own units and forms; empty when nothing does.
   */
  String text(String key) {
    BringField field = BringField.find(plan.what(), key);
    Integer column = places.get(key);
    if (field == null || column == null) {
      return "";
    }
    InCell cell = row.at(column);
    if (field.kind() == PieceField.Kind.MINUTES && cell.kind() == InCell.Kind.NO_DAY) {
      return clock(cell, column);
    }
    if (cell.isBroken()) {
      problems.add(Problem.refuse(code(cell), place(column), cell.text(), ""));
      return "";
    }
    String text = cell.text().strip();
    if (text.isEmpty()) {
      return "";
    }
    ColumnMatch match = plan.columns().get(column);
    return switch (field.kind()) {
      case DATE -> day(cell, text, column);
      case LENGTH -> notADay(cell, column) ? "" : length(text, match.unit());
      case NUMBER, WHOLE -> notADay(cell, column) ? "" : number(field, text, match.unit(), column);
      case MINUTES -> notADay(cell, column) ? "" : minutes(text, match.unit());
      case CHOICE, TEXT -> text;
    };
  }

  /** Where a field's value stands; the field alone where it has no column. */
  Place place(String key) {
    Integer column = places.get(key);
    return column == null ? Place.field(key) : place(column);
  }

  private Place place(int column) {
    return new Place.Cell(plan.sheet().name(), row.number(), Spreadsheet.letters(column));
  }

  private static String code(InCell cell) {
    return switch (cell.kind()) {
      case UNKNOWN -> "in.formula-unknown";
      case NO_DAY -> "in.no-day";
      default -> "in.error-cell";
    };
  }

  /** A fraction such as 3/4 that a spreadsheet program took for the 3rd of April. */
  private boolean notADay(InCell cell, int column) {
    if (cell.kind() == InCell.Kind.DAY) {
      problems.add(Problem.refuse("bring.day-not-number", place(column), cell.text(), ""));
      return true;
    }
    return false;
  }

  private String day(InCell cell, String text, int column) {
    if (cell.kind() == InCell.Kind.DAY) {
      return text;
    }
    Double serial = plainNumber(text);
    if (serial != null) {
      LocalDate day =
          serial >= FIRST_SERIAL && serial < LAST_SERIAL ? SerialDay.of(serial, false) : null;
      if (day == null) {
        problems.add(Problem.refuse("date.not-a-date", place(column), text, "2026-10-05"));
        return "";
      }
      problems.add(Problem.ask("bring.day-from-number", place(column), text, day.toString()));
      return day.toString();
    }
    Answer<LocalDate> read = DayText.read(text, order, place(column));
    problems.addAll(read.problems());
    return read.isGood() ? read.value().toString() : "";
  }

  private static String length(String text, String unit) {
    boolean bare = ReadNumber.plain(text, new Place.Whole()).isGood() && !text.endsWith("%");
    return bare && !unit.isEmpty() ? text + " " + unit : text;
  }

  private static String minutes(String text, String unit) {
    boolean bare = ReadNumber.plain(text, new Place.Whole()).isGood();
    return bare && unit.equals("s") ? text + " s" : text;
  }

  /**
   * A time of day, which spreadsheet programs make of minutes and seconds. Beyond an hour 4:30 was
   * meant as minutes and seconds and taken for hours, which is asked.
   */
  private String clock(InCell cell, int column) {
    Double days = plainNumber(cell.text());
    if (days == null || days >= 1) {
      problems.add(Problem.refuse(code(cell), place(column), cell.text(), ""));
      return "";
    }
    double minutes = days * MINUTES_A_DAY;
    if (minutes < MINUTES_AN_HOUR) {
      return Show.upTo(minutes, 3);
    }
    String taken = Show.upTo(minutes / MINUTES_AN_HOUR, 3);
    problems.add(Problem.ask("bring.minutes-from-hours", place(column), ofDay(minutes), taken));
    return taken;
  }

  private static String ofDay(double minutes) {
    long all = Math.round(minutes);
    return all / 60 + ":" + (all % 60 < 10 ? "0" : "") + all % 60;
  }

  private String number(BringField field, String text, String unit, int column) {
    String bare = field.key().equals(PieceField.NEEDLE_NM.key()) ? NeedleText.size(text) : text;
    Double factor = unit.isEmpty() ? Double.valueOf(1) : ColumnUnit.factor(field.key(), unit);
    if (factor == null) {
      problems.add(Problem.refuse("bring.unit", place(column), unit, ""));
      return "";
    }
    if (factor == 1) {
      return bare;
    }
    Answer<Double> read = ReadNumber.plain(bare, place(column));
    problems.addAll(read.problems());
    return read.isGood()
        ? BigDecimal.valueOf(read.value() * factor).stripTrailingZeros().toPlainString()
        : "";
  }

  private static @Nullable Double plainNumber(String text) {
    return text.matches("[0-9]{1,7}(\\.[0-9]+)?") ? Double.valueOf(text) : null;
  }
}
