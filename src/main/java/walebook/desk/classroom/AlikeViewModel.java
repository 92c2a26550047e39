package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskAlike;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.compare.alike.AlikeFindings;
import walebook.compare.alike.AlikeStudy;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Person;
import walebook.compare.alike.ReadingDot;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.HkPlot;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.statistics.Interval;
import walebook.statistics.Member;
import walebook.words.Words;

/** Do we measure alike: who reads high, who scatters, what a difference must pass. */
public final class AlikeViewModel extends AskingModel<AlikeViewModel.Found> {
  /**
   * What was found.
   *
   * @param studies those with most people first; single readings are counted only
   * @param alone cloths and ways of measuring that one person alone read
   * @param nameless readings of which nobody is known to have taken them, left out
   * @param elsewhere the latest lesson in which several read one cloth alike, where nobody did in
   *     what is asked; its id is null for readings outside lessons; null when there is none
   */
  record Found(List<Study> studies, int alone, int nameless, @Nullable Choice elsewhere) {}

  /**
   * Several people on one cloth.
   *
   * @param says what it means
   * @param practise what to practise
   * @param bias each one's readings less the room's mean, over the interval of the bias; odd ones
   *     that nobody has looked at yet are open and in none of the numbers
   * @param biasNote how the plot reads; names the odd ones
   * @param hkNote how h and k read; of a limit only where there is one
   * @param table the numbers, the header first
   */
  record Study(
      String title,
      List<String> says,
      List<String> practise,
      DotPlot bias,
      String biasNote,
      HkPlot hk,
      String hkNote,
      List<List<String>> table) {}

  public AlikeViewModel(FiltersViewModel filters) {
    super(filters);
  }

  @Override
  Asking.Work<Found> ask(CompareFair.Which which) {
    Book book = session().book();
    Words words = words();
    return progress -> find(book, words, which);
  }

  private static Found find(Book book, Words words, CompareFair.Which which) {
    UUID classId = which.classIds().get(0);
    MeasureAlike alike =
        new AskAlike(book).ask(classId, which.lessonId(), which.clothId(), which.namesHidden());
    List<AlikeStudy> all = alike.studies();
    List<AlikeStudy> several = all.stream().filter(AlikeViewModel::isShared).toList();
    Map<UUID, String> cloths =
        book.cloths().all().stream().collect(Collectors.toMap(Cloth::id, Cloth::name));
    List<Lesson> lessons = book.lessons().of(classId);
    Map<UUID, String> named =
        lessons.stream().collect(Collectors.toMap(Lesson::id, each -> name(each, words)));
    return new Found(
        several.stream().map(each -> study(each, cloths, named, words)).toList(),
        all.size() - several.size(),
        alike.nameless(),
        several.isEmpty() ? elsewhere(book, words, classId, lessons) : null);
  }

  private static boolean isShared(AlikeStudy study) {
    return study.people().size() > 1;
  }

  private static String name(Lesson lesson, Words words) {
    return Choice.of(lesson, words).name();
  }

  private static @Nullable Choice elsewhere(
      Book book, Words words, UUID classId, List<Lesson> lessons) {
    Set<UUID> shared = new HashSet<>();
    boolean outside = false;
    for (AlikeStudy each : new AskAlike(book).ask(classId, null, null, true).studies()) {
      UUID lesson = each.conditions().lessonId();
      if (isShared(each) && lesson != null) {
        shared.add(lesson);
      }
      outside |= isShared(each) && lesson == null;
    }
    Lesson latest =
        lessons.stream()
            .filter(each -> shared.contains(each.id()))
            .max(Comparator.comparing(Lesson::taughtOn))
            .orElse(null);
    if (latest != null) {
      return Choice.of(latest, words);
    }
    return outside ? new Choice(null, words.say("desk.class.any-lesson")) : null;
  }

  /** Asks about the lesson in which several of the class measured one cloth. */
  void lookElsewhere() {
    Found now = foundProperty().get();
    Choice there = now == null ? null : now.elsewhere();
    if (there != null) {
      filters().lookAt(there.id());
    }
  }

  private static Study study(
      AlikeStudy study, Map<UUID, String> cloths, Map<UUID, String> lessons, Words words) {
    List<String> title = new ArrayList<>();
    title.add(cloths.getOrDefault(study.conditions().clothId(), ""));
    title.add(words.say("act.class.grain." + study.conditions().grain().key()));
    UUID lessonId = study.conditions().lessonId();
    String lesson = lessonId == null ? null : lessons.get(lessonId);
    if (lesson != null) {
      title.add(lesson);
    }
    AlikeStudy told = study.told();
    String odd = study.without() == null ? "" : AlikeFindings.odd(study);
    return new Study(
        String.join(" · ", title),
        AlikeFindings.of(study).stream().map(words::say).toList(),
        AlikeFindings.practise(study).stream().map(words::say).toList(),
        bias(study, words),
        words.say("desk.class.alike.bias-note")
            + (odd.isEmpty() ? "" : " " + words.say("desk.class.alike.bias-odd", odd)),
        new HkPlot(told.people().stream().map(AlikeViewModel::hk).toList(), told.criticalH()),
        words.say(told.hasLimits() ? "desk.class.alike.hk-note" : "desk.class.alike.hk-no-limits")
            + (odd.isEmpty() ? "" : " " + words.say("desk.class.alike.hk-odd", odd)),
        table(told, words));
  }

  private static HkPlot.Row hk(Person person) {
    Member member = person.member();
    return new HkPlot.Row(person.who(), member.h(), member.k(), member.criticalK());
  }

  private static DotPlot bias(AlikeStudy study, Words words) {
    AlikeStudy told = study.told();
    double middle = told.agreement().meanOfMeans();
    List<DotRow> rows = new ArrayList<>();
    for (Person person : study.people()) {
      // Nothing is left of one of whom every reading is odd.
      Person counted =
          told.people().stream()
              .filter(each -> each.studentId().equals(person.studentId()))
              .findFirst()
              .orElse(null);
      Set<UUID> open =
          study.without() == null
              ? Set.of()
              : study.oddOf(person).stream()
                  .map(ReadingDot::readingId)
                  .collect(Collectors.toUnmodifiableSet());
      Interval interval = counted == null ? null : counted.member().biasInterval();
      rows.add(
          new DotRow(
              person.who(),
              person.readings().stream()
                  .map(
                      each ->
                          new DotRow.Dot(
                              each.stretch() - middle, false, open.contains(each.readingId())))
                  .toList(),
              counted == null ? null : told.bias(counted),
              interval == null ? null : interval.low(),
              interval == null ? null : interval.high(),
              0));
    }
    return new DotPlot(words.say("desk.class.alike.axis", Show.fixed(middle, 1)), rows, null);
  }

  private static List<List<String>> table(AlikeStudy study, Words words) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            words.say("desk.class.col.student"),
            words.say("desk.class.col.readings"),
            words.say("desk.class.alike.mean"),
            words.say("desk.class.alike.bias"),
            words.say("desk.class.col.from"),
            words.say("desk.class.col.to"),
            "h",
            "k",
            words.say("desk.class.alike.critical-k")));
    for (Person person : study.people()) {
      Member member = person.member();
      Interval interval = member.biasInterval();
      lines.add(
          List.of(
              person.who(),
              Integer.toString(person.readings().size()),
              FairViewModel.number(member.summary().mean()),
              FairViewModel.number(study.bias(person)),
              interval == null ? "–" : FairViewModel.number(interval.low()),
              interval == null ? "–" : FairViewModel.number(interval.high()),
              two(member.h()),
              two(member.k()),
              two(member.criticalK())));
    }
    return lines;
  }

  private static String two(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 2);
  }
}
