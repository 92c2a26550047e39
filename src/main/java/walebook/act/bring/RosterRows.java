package walebook.act.bring;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.DayOrder;
import walebook.act.classroom.EnrolStudents;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Keyed;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.sheet.in.InRow;
import walebook.words.Words;

/** Adds the students of a table to a class, row by row. */
final class RosterRows {
  private static final int LONGEST_NAME = 200;

  private final Book book;
  private final Clock clock;
  private final BringPlan plan;
  private final Map<String, Integer> places;
  private final ChoiceText choices;
  private final Set<String> there = new HashSet<>();
  private final Set<String> aliases = new HashSet<>();

  RosterRows(Book book, Clock clock, BringPlan plan, Map<String, Integer> places, Words words) {
    this.book = book;
    this.clock = clock;
    this.plan = plan;
    this.places = places;
    this.choices = new ChoiceText(words);
    book.enrolments()
        .everyoneOf(plan.classId())
        .forEach(each -> there.add(PieceTable.plain(each.name())));
    book.students().all().forEach(each -> aliases.add(each.alias()));
  }

  List<RowFate> run(UUID step, By by) {
    List<RowFate> fates = new ArrayList<>();
    // Codes that are written down come before those that are drawn.
    List<InRow> without = new ArrayList<>();
    for (InRow row : plan.sheet().rows()) {
      if (reader(row).text(BringField.ALIAS).isEmpty()) {
        without.add(row);
      } else {
        fates.add(row(row, step, by));
      }
    }
    without.forEach(row -> fates.add(row(row, step, by)));
    return fates;
  }

  private CellReader reader(InRow row) {
    return new CellReader(plan, places, DayOrder.UNKNOWN, row);
  }

  private RowFate row(InRow row, UUID step, By by) {
    CellReader cells = reader(row);
    String name = cells.text(BringField.NAME).replaceAll("(?U)\\s+", " ");
    String alias = cells.text(BringField.ALIAS);
    Tier tier = tier(cells);
    List<Problem> problems = new ArrayList<>(cells.problems());
    if (name.isEmpty() && problems.isEmpty()) {
      problems.add(Problem.refuse("field.needed", cells.place(BringField.NAME), "", ""));
    } else if (name.length() > LONGEST_NAME || alias.length() > LONGEST_NAME) {
      problems.add(
          Problem.refuse(
              "bring.name-long", cells.place(BringField.NAME), "", String.valueOf(LONGEST_NAME)));
    }
    if (problems.isEmpty() && there.contains(PieceTable.plain(name))) {
      return new RowFate(row.number(), RowFate.Fate.THERE, name, List.of());
    }
    if (!alias.isEmpty() && aliases.contains(alias)) {
      problems.add(Problem.refuse("alias.taken", cells.place(BringField.ALIAS), alias, ""));
    }
    if (!problems.isEmpty() || tier == null) {
      return new RowFate(row.number(), RowFate.Fate.REFUSED, name, problems);
    }
    add(name, alias, tier, step, by);
    return new RowFate(row.number(), RowFate.Fate.NEW, name, List.of());
  }

  private @Nullable Tier tier(CellReader cells) {
    String text = cells.text(BringField.TIER);
    if (text.isEmpty()) {
      return Tier.STANDARD;
    }
    Tier tier = Keyed.find(Tier.class, choices.key(BringField.TIER, text));
    if (tier == null) {
      cells
          .problems()
          .add(
              Problem.refuse(
                  "choice.unknown", cells.place(BringField.TIER), text, "core, standard, own"));
    }
    return tier;
  }

  private void add(String name, String alias, Tier tier, UUID step, By by) {
    String code = alias.isEmpty() ? EnrolStudents.free(aliases) : alias;
    aliases.add(code);
    there.add(PieceTable.plain(name));
    Student student = new Student(Ids.next(), name, code, tier, Stamp.fresh(clock.instant()));
    book.students().add(student);
    book.enrolments().join(plan.classId(), student.id(), LocalDate.now(clock));
    book.history().underStep(step, by);
  }
}
