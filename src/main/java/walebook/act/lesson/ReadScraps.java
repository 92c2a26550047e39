package walebook.act.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.kit.CutPiece;
import walebook.kit.Kit;
import walebook.kit.PackScraps;
import walebook.kit.Scrap;
import walebook.kit.ScrapAnswer;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;

/**
 * Asks whether pieces come out of scraps, both as typed: {@code cuff=6 of 20 cm x 10 cm}, across
 * the columns of loops first, then along them; {@code free} behind a piece that may be turned.
 */
public final class ReadScraps {
  private static final Pattern FORM =
      Pattern.compile(
          "(?:(?<name>[^=]+)=)?\\s*(?:(?<count>\\d{1,4})\\s*of\\s+)?"
              + "(?<across>[^x×]+)[x×](?<along>[^x×]+?)(?<free>\\s+free)?\\s*");
  private static final String PIECE = "cut-piece";
  private static final String SCRAP = "scrap";
  private static final int MOST_SCRAPS = 100;

  private final Unit usual;
  private final List<Problem> problems = new ArrayList<>();
  private final List<CutPiece> pieces = new ArrayList<>();
  private final List<Scrap> scraps = new ArrayList<>();

  private ReadScraps(Unit usual) {
    this.usual = usual;
  }

  /**
   * The answer.
   *
   * @param margin kept between two pieces; empty for none
   * @param usual the unit meant for a length without one
   */
  public static Answer<ScrapAnswer> answer(
      List<String> pieces, List<String> scraps, String margin, Unit usual, long seed) {
    ReadScraps read = new ReadScraps(usual);
    pieces.forEach(read::piece);
    scraps.forEach(read::scrap);
    return read.answer(margin, seed);
  }

  /**
   * Scraps of one size as typed into a form.
   *
   * @param across usable size across the columns of loops
   * @param along usable size along them
   * @param count empty for one
   */
  public record Row(String across, String along, String count) {
    boolean isEmpty() {
      return across.isBlank() && along.isBlank() && count.isBlank();
    }

    /** The names under which problems of a row are told, by its number from 0. */
    public static Row fields(int number) {
      String row = "scraps[" + number + "].";
      return new Row(row + "across", row + "along", row + "count");
    }
  }

  /**
   * The answer for pieces of a kit and scraps as a form has them.
   *
   * @param rows those that are empty are passed over
   * @param margin kept between two pieces; empty for none
   * @param usual the unit meant for a length without one
   */
  public static Answer<ScrapAnswer> answer(
      Kit.Cut cut, List<Row> rows, String margin, Unit usual, long seed) {
    ReadScraps read = new ReadScraps(usual);
    read.pieces.addAll(cut.pieces());
    for (int i = 0; i < rows.size(); i++) {
      read.scrap(rows.get(i), i);
    }
    return read.answer(margin, seed);
  }

  private Answer<ScrapAnswer> answer(String margin, long seed) {
    Answer<Double> between =
        ReadNumber.length(margin.isBlank() ? "0" : margin, usual, Place.field("margin"));
    problems.addAll(between.problems());
    return problems.isEmpty()
        ? PackScraps.of(pieces, scraps, between.value(), seed)
        : Answer.bad(problems);
  }

  private void piece(String typed) {
    String example = "cuff=6 of 20 cm x 10 cm";
    Matcher form = FORM.matcher(typed.strip().toLowerCase(Locale.ROOT));
    if (!form.matches()) {
      refuse("kit.piece-form", PIECE, typed, example);
      return;
    }
    double across = length(PIECE, form.group("across"));
    double along = length(PIECE, form.group("along"));
    String count = form.group("count");
    int many = count == null ? 1 : Integer.parseInt(count);
    if (many < 1) {
      refuse("kit.no-pieces", PIECE, typed, "1");
    } else if (across > 0 && along > 0) {
      boolean free = form.group("free") != null;
      pieces.add(new CutPiece(name(typed, form), many, across, along, free));
    }
  }

  private void scrap(String typed) {
    Matcher form = FORM.matcher(typed.strip().toLowerCase(Locale.ROOT));
    if (!form.matches() || form.group("free") != null) {
      refuse("kit.scrap-form", SCRAP, typed, "blue=40 cm x 30 cm");
      return;
    }
    String count = form.group("count");
    Row row = new Row(form.group("across"), form.group("along"), count == null ? "" : count);
    scrap(row, name(typed, form), new Row(SCRAP, SCRAP, SCRAP));
  }

  /** A row of a form; one that is empty is passed over. */
  private void scrap(Row row, int number) {
    if (!row.isEmpty()) {
      String name = row.across().strip() + " × " + row.along().strip();
      scrap(row, name, Row.fields(number));
    }
  }

  private void scrap(Row row, String name, Row fields) {
    double across = length(fields.across(), row.across());
    double along = length(fields.along(), row.along());
    Answer<Integer> count =
        row.count().isBlank()
            ? Answer.good(1)
            : ReadNumber.whole(row.count(), Place.field(fields.count()));
    problems.addAll(count.problems());
    int many = count.isGood() ? count.value() : 0;
    if (count.isGood() && (many < 1 || scraps.size() + many > MOST_SCRAPS)) {
      refuse("number.outside", fields.count(), row.count(), "1 – " + MOST_SCRAPS);
      return;
    }
    for (int i = 0; i < many && across > 0 && along > 0; i++) {
      scraps.add(new Scrap(name, across, along));
    }
  }

  /** The name as typed, with its capitals; where there is none, its size stands for it. */
  private static String name(String typed, Matcher form) {
    String name = form.group("name");
    return name == null
        ? typed.strip().substring(form.start("across"), form.end("along")).strip()
        : typed.strip().substring(0, name.length()).strip();
  }

  private double length(String field, String typed) {
    Answer<Double> read = ReadNumber.length(typed, usual, Place.field(field));
    problems.addAll(read.problems());
    if (read.isGood() && read.value() <= 0) {
      refuse("number.not-positive", field, typed.strip(), "20 cm");
    }
    return read.isGood() ? read.value() : 0;
  }

  private void refuse(String code, String field, String found, String wanted) {
    problems.add(Problem.refuse(code, Place.field(field), found.strip(), wanted));
  }
}
