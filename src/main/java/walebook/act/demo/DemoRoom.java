package walebook.act.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.Cloth;
import walebook.record.Dial;
import walebook.record.DialReading;
import walebook.record.Machine;
import walebook.record.SchoolClass;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.Tutor;

/**
 * The demo's class, people, machines and cloths as they stand in the book.
 *
 * @param machines by their numbers
 */
record DemoRoom(
    SchoolClass schoolClass,
    Map<DemoStudent, Student> students,
    Map<DemoCloth, Cloth> cloths,
    Map<Integer, Machine> machines) {
  private static final double CLOTH_WIDTH_MM = 1500;

  static DemoRoom save(Book book) {
    Stamp stamp = Evening.ALL.get(0).stamp(0);
    Term term = new Term(Ids.next(), "Autumn 2026", Evening.termStart(), Evening.termEnd(), stamp);
    book.terms().add(term);
    Tutor tutor = new Tutor(Ids.next(), DemoStudent.TUTOR, stamp);
    book.tutors().add(tutor);
    SchoolClass schoolClass =
        new SchoolClass(
            Ids.next(),
            term.id(),
            tutor.id(),
            "Stretch sewing, Monday evening",
            "Mondays, 18:30, upper room of the harbour hall",
            stamp);
    book.classes().add(schoolClass);
    return new DemoRoom(
        schoolClass,
        students(book, schoolClass, stamp),
        cloths(book, stamp),
        machines(book, term.id(), stamp));
  }

  private static Map<DemoStudent, Student> students(Book book, SchoolClass in, Stamp stamp) {
    Map<DemoStudent, Student> rows = new LinkedHashMap<>();
    for (DemoStudent each : DemoStudent.ALL) {
      String alias = String.format(Locale.ROOT, "S%02d", rows.size() + 1);
      Student row = new Student(Ids.next(), each.name(), alias, each.tier(), stamp);
      book.students().add(row);
      book.enrolments().join(in.id(), row.id(), Evening.termStart());
      rows.put(each, row);
    }
    return rows;
  }

  private static Map<DemoCloth, Cloth> cloths(Book book, Stamp stamp) {
    Map<DemoCloth, Cloth> rows = new LinkedHashMap<>();
    for (DemoCloth each : DemoCloth.ALL) {
      Cloth row =
          new Cloth(
              Ids.next(),
              each.name(),
              each.kind(),
              each.fibre(),
              each.elastane(),
              each.massGm2(),
              CLOTH_WIDTH_MM,
              each.thicknessMm(),
              each.edge(),
              "",
              false,
              stamp);
      book.cloths().add(row);
      rows.put(each, row);
    }
    return rows;
  }

  private static Map<Integer, Machine> machines(Book book, UUID termId, Stamp stamp) {
    Map<Integer, Machine> rows = new LinkedHashMap<>();
    for (DemoMachine each : DemoMachine.ALL) {
      Machine row =
          new Machine(
              Ids.next(),
              each.number(),
              each.name(),
              each.kind(),
              each.stitches(),
              each.needleToKnifeMm(),
              each.pressure(),
              each.tension(),
              each.feeds() ? 0.7 : null,
              each.feeds() ? 2.0 : null,
              card(each, termId),
              "",
              false,
              stamp);
      book.machines().add(row);
      rows.put(each.number(), row);
    }
    return rows;
  }

  private static List<DialReading> card(DemoMachine machine, UUID termId) {
    List<DialReading> card = new ArrayList<>();
    for (double dial : new double[] {1.5, 2.5, 3.5}) {
      card.add(reading(termId, Dial.LENGTH, dial, machine.lengthShare()));
    }
    @Nullable Double width = machine.widthShare();
    if (width != null) {
      for (double dial : new double[] {1, 2, 3, 5}) {
        card.add(reading(termId, Dial.WIDTH, dial, width));
      }
    }
    return card;
  }

  private static DialReading reading(UUID termId, Dial what, double dial, double share) {
    double sewn = Math.rint(dial * share * 20) / 20;
    return new DialReading(Ids.next(), termId, what, dial, sewn, Evening.termStart());
  }

  Student row(DemoStudent student) {
    return found(students, student);
  }

  Cloth row(DemoCloth cloth) {
    return found(cloths, cloth);
  }

  Machine machine(int number) {
    return found(machines, number);
  }

  /** The invented cloth behind a row. */
  DemoCloth cloth(UUID id) {
    return cloths.entrySet().stream()
        .filter(each -> each.getValue().id().equals(id))
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static <K, V> V found(Map<K, V> rows, K key) {
    V row = rows.get(key);
    if (row == null) {
      throw new IllegalStateException("the demo has no " + key);
    }
    return row;
  }
}
