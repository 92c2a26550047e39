package walebook.act.bring;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceRoom;
import walebook.record.Lesson;
import walebook.record.Student;
import walebook.sheet.ChangedText;
import walebook.sheet.LessonTitles;
import walebook.words.Words;

/** What every row of pieces is read against. */
final class PieceTable {
  private final BringPlan plan;
  private final PieceRoom room;
  private final ChoiceText choices;
  private final FaultNames faults;
  private final ChangedText changed;
  private final LocalDate today;
  private final Map<String, UUID> students = new HashMap<>();
  private final LessonsNamed lessons;

  PieceTable(BringPlan plan, PieceRoom room, List<Lesson> lessons, Words words, LocalDate today) {
    this.plan = plan;
    this.room = room;
    this.choices = new ChoiceText(words);
    this.faults = new FaultNames(words, room.faults());
    this.changed = new ChangedText(words);
    this.today = today;
    room.students().forEach(each -> students.put(plain(each.alias()), each.id()));
    oneOfTheirName(room.students())
        .forEach(each -> students.putIfAbsent(plain(each.name()), each.id()));
    this.lessons = new LessonsNamed(lessons);
  }

  /** Two of the same name can only be told apart by their codes. */
  static List<Student> oneOfTheirName(List<Student> all) {
    Map<String, Integer> count = new HashMap<>();
    all.forEach(each -> count.merge(plain(each.name()), 1, Integer::sum));
    return all.stream().filter(each -> count.getOrDefault(plain(each.name()), 0) == 1).toList();
  }

  BringPlan plan() {
    return plan;
  }

  ChangedText changed() {
    return changed;
  }

  PieceRoom room() {
    return room;
  }

  ChoiceText choices() {
    return choices;
  }

  FaultNames faults() {
    return faults;
  }

  LocalDate today() {
    return today;
  }

  @Nullable UUID student(String name) {
    return students.get(plain(name));
  }

  LessonsNamed lessons() {
    return lessons;
  }

  static String plain(String text) {
    return LessonTitles.plain(text);
  }
}
