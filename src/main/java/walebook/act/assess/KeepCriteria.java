package walebook.act.assess;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Criterion;
import walebook.record.Marking;
import walebook.record.Stamp;

/** Keeps the list of what a class's course asks for, as the tutor types it. */
public final class KeepCriteria {
  /** Field of a criterion's code. */
  public static final String CODE = "criterion-code";

  /** Field of a criterion's text. */
  public static final String SAYS = "criterion-says";

  /** Field of the marks that count for a criterion, by their keys; empty for all of them. */
  public static final String MARKS = "criterion-marks";

  /** What stands in that field when no mark is to count, which is refused. */
  public static final String NO_MARKS = "none";

  /** Field of a whole list, one criterion a line. */
  public static final String LIST = "criteria-list";

  private static final int LONGEST_CODE = 16;

  private final Book book;
  private final Clock clock;

  public KeepCriteria(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** Adds a criterion at the end of the list; {@code marks} is as {@link #MARKS} says. */
  public Answer<Criterion> add(UUID classId, String code, String says, String marks) {
    return book.inOneStep(
        () -> {
          List<Criterion> there = book.assessments().criteriaOf(classId);
          List<Problem> problems = check(there, null, code, says);
          Answer<Set<Marking>> looksAt = ReadMarkings.read(MARKS, marks);
          problems.addAll(looksAt.problems());
          if (!problems.isEmpty()) {
            return Answer.bad(problems);
          }
          Criterion added =
              fresh(
                  classId,
                  new CriterionLine(code.strip(), line(says)),
                  end(there),
                  looksAt.value());
          book.assessments().keep(added);
          return Answer.good(added);
        });
  }

  /**
   * Adds a list, one criterion a line: all of them or none. What stands before a tab, or a first
   * word with a figure in it, is its number or letter.
   *
   * @param marks those that count for each of them, as {@link #MARKS} says
   */
  public Answer<List<Criterion>> addList(UUID classId, String lines, String marks) {
    return book.inOneStep(
        () -> {
          List<Criterion> there = book.assessments().criteriaOf(classId);
          Set<String> taken = new HashSet<>();
          there.forEach(each -> taken.add(lower(each.code())));
          List<CriterionLine> read = CriterionLine.all(lines, taken);
          List<Problem> problems = checkList(read, taken);
          Answer<Set<Marking>> looksAt = ReadMarkings.read(MARKS, marks);
          problems.addAll(looksAt.problems());
          if (!problems.isEmpty()) {
            return Answer.bad(problems);
          }
          List<Criterion> added = new ArrayList<>();
          for (CriterionLine each : read) {
            Criterion criterion = fresh(classId, each, end(there) + added.size(), looksAt.value());
            book.assessments().keep(criterion);
            added.add(criterion);
          }
          return Answer.good(added);
        });
  }

  private static List<Problem> checkList(List<CriterionLine> read, Set<String> taken) {
    List<Problem> problems = new ArrayList<>();
    Set<String> codes = new HashSet<>(taken);
    if (read.isEmpty()) {
      problems.add(Problem.refuse("field.needed", Place.field(LIST), "", ""));
    }
    for (CriterionLine each : read) {
      if (each.says().isEmpty()) {
        problems.add(Problem.refuse("criterion.no-text", Place.field(LIST), each.code(), ""));
      } else if (each.code().length() > LONGEST_CODE) {
        problems.add(tooLong(LIST, each.code()));
      } else if (!codes.add(lower(each.code()))) {
        problems.add(Problem.refuse("criterion.taken", Place.field(LIST), each.code(), ""));
      }
    }
    return problems;
  }

  /** Changes a criterion's code, text and the marks that count, as {@link #MARKS} says. */
  public Answer<Criterion> change(Criterion criterion, String code, String says, String marks) {
    return book.inOneStep(
        () -> {
          List<Criterion> there = book.assessments().criteriaOf(criterion.classId());
          Criterion now = find(there, criterion.id());
          if (now == null) {
            return Answer.bad(
                Problem.refuse("criterion.gone", Place.field(CODE), criterion.code(), ""));
          }
          List<Problem> problems = check(there, now.id(), code, says);
          Answer<Set<Marking>> looksAt = ReadMarkings.read(MARKS, marks);
          problems.addAll(looksAt.problems());
          return problems.isEmpty()
              ? Answer.good(kept(now, code.strip(), line(says), now.place(), looksAt.value()))
              : Answer.bad(problems);
        });
  }

  /** Moves a criterion up or down so many places, as far as the list goes. */
  public void move(Criterion criterion, int places) {
    book.inOneStep(
        () -> {
          List<Criterion> all = new ArrayList<>(book.assessments().criteriaOf(criterion.classId()));
          Criterion now = find(all, criterion.id());
          if (now != null) {
            int to = Math.max(0, Math.min(all.size() - 1, all.indexOf(now) + places));
            all.remove(now);
            all.add(to, now);
            number(all);
          }
          return all;
        });
  }

  private void number(List<Criterion> all) {
    for (int i = 0; i < all.size(); i++) {
      Criterion each = all.get(i);
      if (each.place() != i + 1) {
        kept(each, each.code(), each.says(), i + 1, each.looksAt());
      }
    }
  }

  /** Takes a criterion away with its tags. */
  public void remove(UUID criterionId) {
    book.assessments().remove(criterionId);
  }

  private Criterion kept(Criterion now, String code, String says, int place, Set<Marking> looksAt) {
    Criterion changed =
        new Criterion(
            now.id(), now.classId(), code, says, place, looksAt, now.stamp().next(clock.instant()));
    book.assessments().keep(changed);
    return changed;
  }

  private Criterion fresh(UUID classId, CriterionLine line, int place, Set<Marking> looksAt) {
    return new Criterion(
        Ids.next(),
        classId,
        line.code(),
        line.says(),
        place,
        looksAt,
        Stamp.fresh(clock.instant()));
  }

  private static int end(List<Criterion> there) {
    return there.stream().mapToInt(Criterion::place).max().orElse(0) + 1;
  }

  private static @Nullable Criterion find(List<Criterion> all, UUID id) {
    return all.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
  }

  private static List<Problem> check(
      List<Criterion> there, @Nullable UUID own, String code, String says) {
    List<Problem> problems = new ArrayList<>();
    String found = code.strip();
    if (found.isEmpty()) {
      problems.add(Problem.refuse("field.needed", Place.field(CODE), "", "1.1"));
    } else if (found.length() > LONGEST_CODE) {
      problems.add(tooLong(CODE, found));
    } else if (there.stream()
        .anyMatch(each -> !each.id().equals(own) && lower(each.code()).equals(lower(found)))) {
      problems.add(Problem.refuse("criterion.taken", Place.field(CODE), found, ""));
    }
    if (says.isBlank()) {
      problems.add(Problem.refuse("field.needed", Place.field(SAYS), "", ""));
    }
    return problems;
  }

  private static Problem tooLong(String field, String code) {
    return Problem.refuse(
        "criterion.long-code", Place.field(field), code, String.valueOf(LONGEST_CODE));
  }

  private static String line(String says) {
    return says.strip().replaceAll("\\s+", " ");
  }

  private static String lower(String code) {
    return code.toLowerCase(Locale.ROOT);
  }
}
