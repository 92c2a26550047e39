package walebook.act.piece;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.quantity.Show;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.Needle;
import walebook.record.PieceAsked;
import walebook.record.PlannedPiece;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.seam.StitchType;

/** Fills a form before anyone types: from the plan, from the piece before, or from scratch. */
public final class StartPiece {
  private final Book book;

  public StartPiece(Book book) {
    this.book = book;
  }

  /** A planned piece, every setting filled in from the plan and the usual rest from before. */
  public PieceEntry fromPlan(PlannedPiece planned, UUID classId, PieceRoom room) {
    PieceEntry start =
        new PieceEntry(
            Ids.next(),
            classId,
            planned.studentId(),
            planned.lessonId(),
            planned.id(),
            planned.code(),
            null,
            Map.of());
    TestPiece last = last(classId, planned.studentId());
    Map<PieceField, String> typed = usual(last, planned.studentId());
    PieceAsked asked = planned.asked();
    put(typed, PieceField.CLOTH, planned.clothId() == null ? "" : planned.clothId().toString());
    put(typed, PieceField.GRAIN, asked.grain().key());
    put(typed, PieceField.LAYERS, String.valueOf(asked.layers()));
    put(typed, PieceField.METHOD, asked.method().key());
    put(typed, PieceField.STITCH, asked.stitchType());
    put(typed, PieceField.MACHINE, machine(room, asked, last));
    put(typed, PieceField.DIAL_WIDTH, number(asked.dialWidth()));
    put(typed, PieceField.DIAL_LENGTH, number(asked.dialLength()));
    put(typed, needle(asked.needle()));
    put(typed, PieceField.HEM_METHOD, asked.hemMethod());
    put(typed, PieceField.STABILISER, asked.stabiliser());
    put(typed, PieceField.NEED, number(asked.needPercent()));
    return start.with(typed);
  }

  /** A piece of one's own, with what the last one left as usual. */
  public PieceEntry fresh(UUID classId, UUID studentId, @Nullable UUID lessonId, PieceRoom room) {
    PieceEntry start =
        new PieceEntry(Ids.next(), classId, studentId, lessonId, null, null, null, Map.of());
    TestPiece last = last(classId, studentId);
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    if (last != null) {
      typed.putAll(typed(start, last, room).typed());
    }
    typed.putAll(usual(last, studentId));
    return start.with(typed);
  }

  /** The same piece again, to be changed in one thing; the measure starts empty. */
  public PieceEntry again(TestPiece parent, PieceRoom room) {
    PieceEntry start =
        new PieceEntry(
            Ids.next(),
            parent.whose().classId(),
            parent.whose().studentId(),
            parent.whose().lessonId(),
            null,
            null,
            parent.id(),
            Map.of());
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    typed.putAll(usual(parent, parent.whose().studentId()));
    typed.putAll(typed(start, parent, room).typed());
    return start.with(typed);
  }

  /** A piece's settings as they would have been typed. */
  public static PieceEntry typed(PieceEntry like, TestPiece piece, PieceRoom room) {
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    put(typed, PieceField.CLOTH, piece.cloth().clothId().toString());
    put(typed, PieceField.GRAIN, piece.cloth().grain().key());
    put(typed, PieceField.LAYERS, String.valueOf(piece.cloth().layers()));
    Setting setting = piece.setting();
    Machine machine = room.machine(setting.machineId());
    put(typed, PieceField.METHOD, setting.method().key());
    put(typed, PieceField.MACHINE, machine == null ? "" : String.valueOf(machine.number()));
    put(typed, PieceField.STITCH, setting.stitchType());
    put(typed, PieceField.DIAL_WIDTH, number(setting.dialWidth()));
    put(typed, PieceField.DIAL_LENGTH, number(setting.dialLength()));
    put(typed, needle(setting.needle()));
    put(typed, PieceField.HEM_METHOD, setting.hemMethod());
    put(typed, PieceField.DIFFERENTIAL_FEED, number(setting.differentialFeed()));
    put(typed, PieceField.THREAD, setting.thread());
    put(typed, PieceField.PRESSURE, key(setting.pressure()));
    put(typed, PieceField.TENSION, key(setting.tension()));
    put(typed, PieceField.STABILISER, setting.stabiliser());
    put(typed, PieceField.NEED, number(piece.measure().needPercent()));
    return like.with(typed);
  }

  private @Nullable TestPiece last(UUID classId, UUID studentId) {
    List<TestPiece> newest =
        book.pieces().list(PieceFilter.ALL.ofClass(classId).ofStudent(studentId).page(1, 0));
    return newest.isEmpty() ? null : newest.get(0);
  }

  private static Map<PieceField, String> usual(@Nullable TestPiece last, UUID studentId) {
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    put(typed, PieceField.LAYERS, "2");
    put(typed, PieceField.GAUGE, "100 mm");
    put(typed, PieceField.EDGE_BEFORE, "100 mm");
    put(typed, PieceField.MEASURED_BY, studentId.toString());
    put(typed, PieceField.REST, "60");
    put(typed, PieceField.FOLD, "single");
    put(typed, PieceField.PULL, "firm");
    if (last != null) {
      Double gauge = last.measure().gaugeMm();
      Double edge = last.measure().edgeBeforeMm();
      put(typed, PieceField.THREAD, last.setting().thread());
      put(typed, PieceField.PRESSURE, key(last.setting().pressure()));
      put(typed, PieceField.TENSION, key(last.setting().tension()));
      put(typed, PieceField.GAUGE, gauge == null ? "" : Show.mm(gauge));
      put(typed, PieceField.EDGE_BEFORE, edge == null ? "" : Show.mm(edge));
      put(typed, PieceField.FOLD, key(last.measure().how().fold()));
      put(typed, PieceField.PULL, key(last.measure().how().pull()));
      put(typed, PieceField.LOAD, number(last.measure().how().loadG()));
      put(typed, PieceField.REST, number(last.measure().how().restS()));
    }
    return typed;
  }

  /** The machine used last if it can sew the stitch, else the first of the room that can. */
  private static String machine(PieceRoom room, PieceAsked asked, @Nullable TestPiece last) {
    Machine before = last == null ? null : room.machine(last.setting().machineId());
    if (before != null && canSew(before, asked)) {
      return String.valueOf(before.number());
    }
    return room.machines().stream()
        .filter(each -> canSew(each, asked))
        .findFirst()
        .map(each -> String.valueOf(each.number()))
        .orElse("");
  }

  private static boolean canSew(Machine machine, PieceAsked asked) {
    return !machine.retired()
        && machine.kind() == asked.machineKind()
        && (machine.stitches().isEmpty() || machine.stitches().contains(asked.stitchType()));
  }

  private static void put(Map<PieceField, String> typed, @Nullable Needle needle) {
    put(typed, PieceField.NEEDLE_POINT, needle == null ? "" : needle.point().key());
    put(typed, PieceField.NEEDLE_NM, needle == null ? "" : String.valueOf(needle.nm()));
  }

  private static @Nullable Needle needle(@Nullable Needle needle) {
    return needle;
  }

  private static void put(Map<PieceField, String> typed, PieceField field, String text) {
    if (!text.isEmpty()) {
      typed.put(field, text);
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : Show.upTo(value, 2);
  }

  private static String key(@Nullable Keyed choice) {
    return choice == null ? "" : choice.key();
  }

  /** The stitch's row for a planned piece, or null when the table lacks it. */
  public static @Nullable StitchType stitch(PlannedPiece planned, PieceRoom room) {
    return room.stitch(planned.asked().stitchType());
  }
}
