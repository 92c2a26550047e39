package walebook.desk.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.JudgePiece;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.MyPlan;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.PieceSoFar;
import walebook.act.piece.StartPiece;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.ReadingsThatCount;
import walebook.desk.common.Session;
import walebook.drawing.StitchForm;
import walebook.drawing.StitchPicture;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Reads a student's day from the book; never on the window's thread. */
final class LoadDay {
  private static final int RECENT = 5;

  private final Book book;
  private final Words words;
  private final SharedTables tables;
  private final LocalDate today;
  private final List<StitchType> stitches;
  private final Names names;
  private final Unit unit;
  private final Map<UUID, Map<Grain, ClothStretch>> stretches;

  LoadDay(Session session) {
    this.book = session.book();
    this.words = session.words();
    this.tables = session.tables();
    this.today = LocalDate.now(session.clock());
    this.stitches = tables.stitchTypes();
    this.names = Names.of(book, false);
    this.unit = book.info().lengthUnit();
    this.stretches = ReadingsThatCount.stretches(book);
  }

  MyDay of(UUID classId, UUID studentId) {
    MyPlan plan = MyPlan.of(book, classId, studentId);
    OfLesson lessons = OfLesson.read(book, words, classId, today);
    List<PlanRow> rows = new ArrayList<>();
    for (MyPlan.Line line : plan.lines()) {
      rows.add(row(rows.size() + 1, line, lessons));
    }
    PlannedPiece next = plan.next(lessons.inHand());
    return new MyDay(
        rows,
        plan.done(),
        next == null ? null : next(next, classId, whose(next, lessons)),
        recent(plan),
        new LoadReadings(book, words, names, lessons).of(classId, studentId));
  }

  private String whose(PlannedPiece planned, OfLesson lessons) {
    String lesson = lessons.says(planned.lessonId());
    if (!planned.isForGarment()) {
      return lesson;
    }
    return lesson.isEmpty()
        ? words.say("desk.today.for-garment")
        : words.say("desk.today.for-garment-of", lesson);
  }

  private PlanRow row(int number, MyPlan.Line line, OfLesson lessons) {
    TestPiece logged = line.logged();
    return new PlanRow(
        line.planned().id(),
        logged == null ? null : logged.id(),
        number,
        PieceCode.spoken(line.planned().code()),
        words.say(
            "desk.today.asks",
            cloth(line.planned()),
            words.say("desk.today.grain." + line.planned().asked().grain().key()),
            line.planned().isForGarment()
                ? words.say("desk.today.asks-garment", stitch(line.planned().asked()))
                : stitch(line.planned().asked())),
        logged == null ? lessons.says(line.planned().lessonId()) : end(logged));
  }

  private NextPiece next(PlannedPiece planned, UUID classId, String ofLesson) {
    PieceAsked asked = planned.asked();
    List<String> settings = new ArrayList<>();
    settings.add(
        asked.layers() == 1
            ? words.say("desk.today.next-cloth-one", cloth(planned))
            : words.say("desk.today.next-cloth", cloth(planned), asked.layers()));
    settings.add(words.say("common.choice." + asked.grain().key()));
    settings.add(onTheDial(asked));
    if (asked.needle() != null) {
      String point = words.say("common.choice." + asked.needle().point().key());
      settings.add(words.say("desk.today.next-needle", point, asked.needle().nm()));
    }
    // What a plan calls none would be read as none of whatever stands before it.
    boolean nothing = !asked.stabiliser().isBlank() && !asked.isStabilised();
    String under = nothing ? words.say("desk.lessons.plan.no-stabiliser") : asked.stabiliser();
    Stream.of(asked.hemMethod(), under).filter(each -> !each.isBlank()).forEach(settings::add);
    if (asked.needPercent() != null) {
      settings.add(words.say("desk.today.next-need", Show.upTo(asked.needPercent(), 1)));
    }
    if (asked.readings() > 1) {
      settings.add(words.say("desk.today.next-readings", asked.readings()));
    }
    return new NextPiece(
        planned.id(),
        PieceCode.spoken(planned.code()),
        ofLesson,
        settings,
        picture(planned, classId));
  }

  private List<RecentPiece> recent(MyPlan plan) {
    Stream<TestPiece> planned =
        plan.lines().stream().map(MyPlan.Line::logged).filter(each -> each != null);
    return Stream.concat(planned, plan.own().stream())
        .sorted((a, b) -> b.stamp().created().compareTo(a.stamp().created()))
        .limit(RECENT)
        .map(
            each ->
                new RecentPiece(
                    each.id(),
                    PieceCode.spoken(each.code()),
                    says(each),
                    JudgePiece.of(each.measure(), stretch(each)).verdict()))
        .toList();
  }

  private @Nullable ClothStretch stretch(TestPiece piece) {
    return stretches.getOrDefault(piece.cloth().clothId(), Map.of()).get(piece.cloth().grain());
  }

  private String says(TestPiece piece) {
    return words.say("desk.today.recent", names.of(piece.cloth().clothId()), end(piece));
  }

  private String end(TestPiece piece) {
    PullReading pull = piece.measure().counting();
    if (pull == null) {
      return words.say("desk.today.not-pulled");
    }
    return words.say(
        pull.end() == SeamEnd.GAVE ? "desk.today.gave" : "desk.today.held",
        Show.length(pull.endMm(), unit));
  }

  private String cloth(PlannedPiece planned) {
    String name = planned.clothId() == null ? "" : names.of(planned.clothId());
    return name.isEmpty() ? words.say("desk.today.cloth-open") : name;
  }

  private String stitch(PieceAsked asked) {
    String name = name(asked);
    if (asked.dialLength() == null) {
      return name;
    }
    String length = Show.upTo(asked.dialLength(), 2);
    Double width = width(asked);
    return width == null
        ? words.say("desk.today.stitch-length", name, length)
        : words.say("desk.today.stitch", name, Show.upTo(width, 2), length);
  }

  /** The picture beside it shows what is sewn, which is seldom what the dial says. */
  private String onTheDial(PieceAsked asked) {
    if (asked.dialLength() == null) {
      return stitch(asked);
    }
    String length = Show.upTo(asked.dialLength(), 2);
    Double width = width(asked);
    return width == null
        ? words.say("desk.today.next-stitch-length", name(asked), length)
        : words.say("desk.today.next-stitch", name(asked), Show.upTo(width, 2), length);
  }

  /** A plan may say a width of 0 for a stitch that has none. */
  private @Nullable Double width(PieceAsked asked) {
    StitchType type = type(asked);
    return type == null || type.hasWidth() ? asked.dialWidth() : null;
  }

  private String name(PieceAsked asked) {
    StitchType type = type(asked);
    return type == null ? asked.stitchType() : type.name().replaceAll(" \\(.*", "");
  }

  private @Nullable StitchType type(PieceAsked asked) {
    return stitches.stream()
        .filter(each -> each.key().equals(asked.stitchType()))
        .findFirst()
        .orElse(null);
  }

  /** The stitch as the machine that the form will offer sews it, not as its dial says. */
  private @Nullable StitchPicture picture(PlannedPiece planned, UUID classId) {
    PieceRoom room = LoadPieceRoom.of(book, tables, classId);
    PieceEntry start = new StartPiece(book).fromPlan(planned, classId, room);
    Setting setting = PieceSoFar.of(start, room, today).setting();
    if (setting == null) {
      return null;
    }
    StitchType type = type(planned.asked());
    Double length = setting.sewnLengthMm();
    Double width = setting.sewnWidthMm();
    if (type == null
        || length == null
        || length < 0.1
        || length > 50
        || (type.hasWidth() && (width == null || width > 50))) {
      return null;
    }
    double wide = type.hasWidth() && width != null ? width : 0;
    return new StitchPicture(StitchForm.of(type), wide, length);
  }
}
