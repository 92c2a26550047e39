package walebook.act.bring;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.act.bring.match.DayText;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.sheet.in.InCell;
import walebook.sheet.in.InRow;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** What trying rows and bringing them in have in common. */
final class BringIn {
  private final Book book;
  private final SharedTables tables;
  private final Words words;
  private final Clock clock;
  private final Random chance;

  BringIn(Book book, SharedTables tables, Words words, Clock clock, Random chance) {
    this.book = book;
    this.tables = tables;
    this.words = words;
    this.clock = clock;
    this.chance = chance;
  }

  /** Every row's fate; refused when the columns do not hold what is needed. */
  Answer<Trial> run(BringPlan plan, boolean dry, By by) {
    return plan.places()
        .flatMap(
            places -> {
              Problem missing = missing(plan, places);
              if (missing != null) {
                return Answer.bad(missing);
              }
              return Answer.good(
                  switch (plan.what()) {
                    case ROSTER -> roster(plan, places, dry, by);
                    case PIECES -> pieces(plan, places, dry, by);
                    case CLOTHS, READINGS, WASHES, NOTES -> log(plan, places, dry, by);
                  });
            });
  }

  private static @Nullable Problem missing(BringPlan plan, Map<String, Integer> places) {
    if (plan.what() == BringWhat.PIECES
        && !places.containsKey(BringField.STUDENT)
        && plan.studentId() == null) {
      return column(BringField.STUDENT);
    }
    for (String each : needed(plan.what())) {
      if (!places.containsKey(each)) {
        return column(each);
      }
    }
    return null;
  }

  private static List<String> needed(BringWhat what) {
    return switch (what) {
      case ROSTER -> List.of(BringField.NAME);
      case PIECES -> List.of("cloth", "grain", "stitch");
      case CLOTHS -> List.of(BringField.CLOTH_NAME);
      case READINGS -> List.of("cloth", "grain", "gauge", "stretched");
      case WASHES -> List.of("cloth", "grain", "before", "after");
      case NOTES -> List.of(BringField.NOTE_ABOUT, BringField.NOTE_WHICH, "note-body");
    };
  }

  private static Problem column(String field) {
    return Problem.refuse("bring.no-column", Place.field(field), "", "");
  }

  private Trial roster(BringPlan plan, Map<String, Integer> places, boolean dry, By by) {
    return new InOneStep(book)
        .run(
            plan,
            dry,
            false,
            step -> new RosterRows(book, clock, plan, places, words).run(step, by));
  }

  private Trial pieces(BringPlan plan, Map<String, Integer> places, boolean dry, By by) {
    DayOrder order = order(plan, places);
    boolean needsOrder = needsOrder(plan, places, order);
    PieceTable table =
        new PieceTable(
            plan, room(plan), book.lessons().of(plan.classId()), words, LocalDate.now(clock));
    List<PieceRow> rows = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (InRow each : plan.sheet().rows()) {
      rows.add(new PieceRow(table, new CellReader(plan, places, order, each)));
      numbers.add(each.number());
    }
    return new InOneStep(book)
        .run(
            plan,
            dry,
            needsOrder,
            step -> new PieceRows(book, clock, chance, table, rows, numbers).run(step, by));
  }

  private Trial log(BringPlan plan, Map<String, Integer> places, boolean dry, By by) {
    DayOrder order = order(plan, places);
    return new InOneStep(book)
        .run(
            plan,
            dry,
            needsOrder(plan, places, order),
            step -> new LogRows<>(book, plan, places, order, kind(plan)).run(step, by));
  }

  private LogKind<?> kind(BringPlan plan) {
    LogTable table = new LogTable(book, plan.classId(), words);
    ChoiceText choices = new ChoiceText(words);
    return switch (plan.what()) {
      case CLOTHS -> new ClothKind(book, clock, tables.fabricKinds(), words);
      case READINGS -> new ReadingKind(book, clock, plan.classId(), table, choices);
      case WASHES -> new WashKind(book, clock, table, choices);
      case NOTES -> new NoteKind(book, clock, plan.classId(), table, words);
      case ROSTER, PIECES -> throw new IllegalArgumentException("no log: " + plan.what());
    };
  }

  private static DayOrder order(BringPlan plan, Map<String, Integer> places) {
    return plan.order() == DayOrder.UNKNOWN ? DayText.order(days(plan, places)) : plan.order();
  }

  private static boolean needsOrder(BringPlan plan, Map<String, Integer> places, DayOrder order) {
    return order == DayOrder.UNKNOWN && days(plan, places).stream().anyMatch(DayText::isAmbiguous);
  }

  /** What was sewn once was sewn on cloths and machines that may be out of use by now. */
  private PieceRoom room(BringPlan plan) {
    PieceRoom now = LoadPieceRoom.of(book, tables, plan.classId());
    return new PieceRoom(
        book.cloths().all(),
        book.machines().all(),
        now.students(),
        now.stitches(),
        now.faults(),
        now.stretches(),
        now.lengthUnit());
  }

  private static List<String> days(BringPlan plan, Map<String, Integer> places) {
    List<String> days = new ArrayList<>();
    for (BringField each : BringField.of(plan.what())) {
      Integer column = places.get(each.key());
      if (each.kind() == PieceField.Kind.DATE && column != null) {
        for (InRow row : plan.sheet().rows()) {
          InCell cell = row.at(column);
          if (cell.kind() == InCell.Kind.TEXT) {
            days.add(cell.text());
          }
        }
      }
    }
    return days;
  }
}
