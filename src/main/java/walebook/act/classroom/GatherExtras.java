package walebook.act.classroom;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import walebook.act.decide.AnswerGarment;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitPriceBook;
import walebook.act.lesson.KitReckoned;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.PlannedCloths;
import walebook.act.lesson.ReadTaught;
import walebook.act.lesson.WorkOutKit;
import walebook.book.Book;
import walebook.drawing.VerdictMark;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.kit.ClothToBuy;
import walebook.kit.Kit;
import walebook.kit.KitLine;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.GarmentSheet;
import walebook.record.Lesson;
import walebook.record.Student;
import walebook.sheet.GarmentRow;
import walebook.sheet.KitRow;
import walebook.sheet.LessonTitles;
import walebook.sheet.TermChoice;
import walebook.sheet.TermExtras;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** What calculations say of a class's lessons and garments, worded for the term's record. */
final class GatherExtras {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  GatherExtras(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  TermExtras of(UUID classId, TermChoice choice) {
    return new TermExtras(kit(classId, choice), garments(classId, choice));
  }

  private List<KitRow> kit(UUID classId, TermChoice choice) {
    List<KitRow> rows = new ArrayList<>();
    int students = book.enrolments().studentsOf(classId).size();
    if (students == 0) {
      return rows;
    }
    List<Lesson> lessons = book.lessons().of(classId);
    Map<UUID, String> titles = LessonTitles.of(lessons);
    for (Lesson lesson : lessons) {
      if (choice.lessonIds().isEmpty() || choice.lessonIds().contains(lesson.id())) {
        Answer<Kit> kit = kit(lesson, students);
        if (kit.isGood()) {
          rows.addAll(rows(titles.getOrDefault(lesson.id(), lesson.title()), kit.value()));
        }
      }
    }
    return rows;
  }

  /**
   * As the list to buy by has it when nothing else is typed, on the cloths that were planned and at
   * the prices that the book remembers.
   */
  private Answer<Kit> kit(Lesson lesson, int students) {
    return new ReadTaught(book, new ReadPack())
        .pack(lesson.packId())
        .flatMap(
            pack -> {
              Map<String, UUID> planned = PlannedCloths.of(book, lesson, pack);
              Map<String, KitCloth> cloths = KitCloth.in(book, planned);
              KitTyped typed = new KitPriceBook(book, pack, planned).with(KitTyped.usual(students));
              KitReckoned reckoned = KitReckoned.dealt(book, lesson, pack);
              return WorkOutKit.of(pack, reckoned, cloths, typed, tables, Unit.MM, 1);
            });
  }

  private List<KitRow> rows(String lesson, Kit kit) {
    Iterator<ClothToBuy> plans = kit.cloths().iterator();
    List<KitRow> rows = new ArrayList<>();
    for (KitLine line : kit.lines()) {
      boolean laid = line.kind() == KitLine.Kind.CLOTH && plans.hasNext();
      rows.add(
          new KitRow(
              lesson,
              words.say(line.what()),
              line.perStudent(),
              line.forClass(),
              line.unit().sign(),
              laid ? Double.valueOf(plans.next().plan().alongMm()) : null,
              line.price(),
              line.cost()));
    }
    if (kit.unpriced() < kit.lines().size()) {
      String together = Show.fixed(kit.cost(), 2);
      rows.add(KitRow.remark(lesson, words.say("sheet.kit.together", together, kit.unpriced())));
    }
    kit.says().forEach(each -> rows.add(KitRow.remark(lesson, words.say(each))));
    return rows;
  }

  private List<GarmentRow> garments(UUID classId, TermChoice choice) {
    Set<UUID> students = new HashSet<>();
    for (Student each : book.enrolments().everyoneOf(classId)) {
      if (choice.studentIds().isEmpty() || choice.studentIds().contains(each.id())) {
        students.add(each.id());
      }
    }
    List<GarmentRow> rows = new ArrayList<>();
    for (GarmentSheet sheet : book.garments().all()) {
      UUID whose = sheet.studentId();
      if (whose == null ? choice.studentIds().isEmpty() : students.contains(whose)) {
        rows.addAll(rows(sheet));
      }
    }
    return rows;
  }

  private List<GarmentRow> rows(GarmentSheet sheet) {
    Map<String, Double> body = book.garments().bodyOf(sheet.id());
    GarmentAnswers answers = new AnswerGarment(book, tables).answer(sheet, body);
    UUID clothId = sheet.clothId();
    Cloth cloth = clothId == null ? null : book.cloths().find(clothId);
    List<GarmentRow> rows = new ArrayList<>();
    for (Check check : answers.checks()) {
      boolean kept = !body.isEmpty() && check.kind().tellsBody();
      rows.add(
          new GarmentRow(
              sheet.name(),
              sheet.studentId(),
              answers.question().kind().name(),
              cloth == null ? "" : cloth.name(),
              words.say(check.about()),
              words.say(VerdictMark.key(check.verdict())),
              words.say(kept ? check.saysWithoutGirths() : check.working().says())));
    }
    return rows;
  }
}
