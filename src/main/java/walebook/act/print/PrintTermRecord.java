package walebook.act.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.JudgePiece;
import walebook.book.Book;
import walebook.book.PieceFilter;
import walebook.compare.ClothStretch;
import walebook.compare.ReadingsThatCount;
import walebook.drawing.Drawing;
import walebook.drawing.GaugePicture;
import walebook.drawing.GaugeReading;
import walebook.paper.PaperSize;
import walebook.paper.TermPaper;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.record.Measure;
import walebook.record.Note;
import walebook.record.PieceCode;
import walebook.record.PullReading;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Tutor;
import walebook.seam.Fault;
import walebook.seam.PieceVerdict;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints a student's record of a term, with drawings and photos. */
public final class PrintTermRecord {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintTermRecord(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  /** Prints the record of the scope's student; free text is left out where names are. */
  public Answer<Printed> print(PrintScope scope, PaperSize size, PrintFile file) {
    UUID id = scope.studentId();
    Student student = id == null ? null : book.students().find(id);
    SchoolClass of = book.classes().find(scope.classId());
    if (student == null || of == null) {
      return Answer.bad(Problem.refuse("field.needed", Place.field("student"), "", ""));
    }
    TermPaper paper = book.inOneStep(() -> paper(scope, student, of));
    return file.write(words, pages -> pages.term(size, paper));
  }

  private TermPaper paper(PrintScope scope, Student student, SchoolClass of) {
    GatherPieces gather = new GatherPieces(book, scope, words, tables);
    List<Student> everyone = book.enrolments().everyoneOf(of.id());
    String who = new CallStudents(everyone, scope.naming(), words).of(student.id());
    Map<UUID, Map<Grain, ClothStretch>> stretches = ReadingsThatCount.stretches(book);
    List<TermPaper.Piece> pieces =
        book
            .pieces()
            .list(
                PieceFilter.ALL.ofClass(of.id()).ofStudent(student.id()).ofLesson(scope.lessonId()))
            .stream()
            .sorted(
                Comparator.comparing((TestPiece each) -> each.whose().sewnOn())
                    .thenComparing(TestPiece::code))
            .map(each -> piece(each, scope.naming(), gather.wording(), stretches))
            .toList();
    return new TermPaper(who, lines(of, scope.naming()), lessons(scope, student.id()), pieces);
  }

  private List<String> lines(SchoolClass of, Naming naming) {
    List<String> lines = new ArrayList<>();
    lines.add(words.say("act.print.term.class", of.name()));
    Term term = book.terms().find(of.termId());
    if (term != null) {
      lines.add(words.say("act.print.term.term", term.name(), term.startsOn(), term.endsOn()));
    }
    Tutor tutor = of.tutorId() == null ? null : book.tutors().find(of.tutorId());
    if (tutor != null && naming == Naming.NAME) {
      lines.add(words.say("act.print.term.tutor", tutor.name()));
    }
    if (book.info().invented()) {
      lines.add(words.say("sheet.invented"));
    }
    return lines;
  }

  private List<String> lessons(PrintScope scope, UUID studentId) {
    List<String> lines = new ArrayList<>();
    GatherPieces gather =
        new GatherPieces(
            book,
            new PrintScope(scope.classId(), scope.lessonId(), studentId, scope.naming()),
            words,
            tables);
    Map<String, List<PieceLine>> byLesson =
        gather.of(studentId).stream()
            .filter(each -> each.planned() != null && each.lesson() != null)
            .collect(
                Collectors.groupingBy(
                    PrintTermRecord::title, java.util.LinkedHashMap::new, Collectors.toList()));
    byLesson.forEach(
        (title, all) -> {
          long done = all.stream().filter(each -> each.logged() != null).count();
          lines.add(words.say("act.print.term.lesson", title, done, all.size()));
        });
    return lines;
  }

  private static String title(PieceLine line) {
    return line.lesson() == null ? "" : line.lesson().title();
  }

  private TermPaper.Piece piece(
      TestPiece piece,
      Naming naming,
      PieceWording wording,
      Map<UUID, Map<Grain, ClothStretch>> stretches) {
    Measure measure = piece.measure();
    PieceVerdict verdict =
        JudgePiece.of(
            measure,
            stretches.getOrDefault(piece.cloth().clothId(), Map.of()).get(piece.cloth().grain()));
    PieceLine line = new PieceLine(piece.whose().studentId(), piece.code(), null, null, piece);
    PullReading pull = measure.counting();
    Double stretch = measure.seamStretchPercent();
    String bound = pull != null && pull.end() == SeamEnd.HELD ? "≥ " : "";
    Integer grade = piece.seen().grade();
    return new TermPaper.Piece(
        PieceCode.spoken(piece.code()),
        piece.whose().sewnOn().toString(),
        words.say(
            "act.print.cloth-grain", wording.cloth(line), wording.grainSays(piece.cloth().grain())),
        wording.settings(piece),
        pull == null ? "–" : ended(pull),
        stretch == null ? "" : bound + Show.percent(stretch),
        grade == null ? "" : grade.toString(),
        verdict.verdict(),
        words.say(verdict.working().says()),
        seen(piece, naming),
        drawing(measure, pull),
        photos(piece));
  }

  private String ended(PullReading pull) {
    String length = Show.length(pull.endMm(), unit());
    return pull.end() == SeamEnd.GAVE
        ? words.say("act.print.gave", length)
        : words.say("act.print.held", length);
  }

  private Unit unit() {
    return book.info().lengthUnit();
  }

  private String seen(TestPiece piece, Naming naming) {
    List<String> says = new ArrayList<>();
    piece.seen().faults().forEach(each -> says.add(fault(each.fault())));
    List<String> parts = new ArrayList<>();
    parts.add(String.join(", ", says));
    if (naming == Naming.NAME) {
      parts.add(piece.seen().remark());
      book.notes().about(Note.About.PIECE, piece.id()).forEach(each -> parts.add(note(each)));
    }
    parts.removeIf(String::isBlank);
    return String.join(". ", parts);
  }

  private String note(Note note) {
    String body = note.body().lines().map(String::strip).collect(Collectors.joining(" "));
    return note.author().isBlank()
        ? words.say("act.print.term.note", body)
        : words.say("act.print.term.note-from", note.author(), body);
  }

  private String fault(String key) {
    return tables.faults().stream()
        .filter(each -> each.key().equals(key))
        .map(Fault::name)
        .findFirst()
        .orElse(key);
  }

  private @Nullable Drawing drawing(Measure measure, @Nullable PullReading pull) {
    if (measure.gaugeMm() == null) {
      return null;
    }
    Double after = measure.edgePressedMm() == null ? measure.edgeSewnMm() : measure.edgePressedMm();
    GaugeReading.How how =
        pull == null
            ? GaugeReading.How.STRETCHED
            : pull.end() == SeamEnd.GAVE ? GaugeReading.How.GAVE : GaugeReading.How.HELD;
    return new GaugePicture(
        new GaugeReading(
            measure.gaugeMm(),
            pull == null ? null : pull.endMm(),
            how,
            measure.releasedMm(),
            after == null ? null : measure.edgeBeforeMm(),
            after),
        unit());
  }

  private List<TermPaper.Photo> photos(TestPiece piece) {
    List<TermPaper.Photo> photos = new ArrayList<>();
    book.photos()
        .ofPiece(piece.id())
        .forEach(each -> photos.add(() -> book.photos().image(each.id())));
    return photos;
  }
}
