package walebook.desk.pieces;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.JudgePiece;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.ReadingsThatCount;
import walebook.desk.common.Session;
import walebook.drawing.VerdictMark;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.record.PieceCode;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Setting;
import walebook.record.TestPiece;
import walebook.seam.Fault;
import walebook.seam.PieceVerdict;
import walebook.words.Words;

/** Words for saved pieces; reads names and cloths from the book once, so never made in a frame. */
final class PieceWords {
  private final Words words;
  private final Names names;
  private final Unit unit;
  private final Map<UUID, Map<Grain, ClothStretch>> stretches;
  private final List<Fault> faults;

  PieceWords(Session session, boolean namesHidden) {
    Book book = session.book();
    this.words = session.words();
    this.names = Names.of(book, namesHidden);
    this.unit = book.info().lengthUnit();
    this.stretches = ReadingsThatCount.stretches(book);
    this.faults = session.tables().faults();
  }

  Unit unit() {
    return unit;
  }

  String name(@Nullable UUID id) {
    return id == null ? "" : names.of(id);
  }

  PieceVerdict judge(TestPiece piece) {
    return JudgePiece.of(
        piece.measure(),
        stretches.getOrDefault(piece.cloth().clothId(), Map.of()).get(piece.cloth().grain()));
  }

  PieceRow row(TestPiece piece) {
    Double stretch = piece.measure().seamStretchPercent();
    return new PieceRow(
        piece.id(),
        PieceCode.spoken(piece.code()),
        piece.whose().sewnOn(),
        name(piece.whose().studentId()),
        words.say(
            "desk.pieces.row-cloth",
            name(piece.cloth().clothId()),
            words.say("desk.pieces.grain." + piece.cloth().grain().key())),
        stitch(piece.setting()),
        end(piece),
        stretch == null ? Double.NaN : stretch,
        stretch(piece),
        words.say(VerdictMark.key(judge(piece).verdict())),
        piece.seen().faults().stream()
            .map(each -> fault(each.fault()))
            .collect(Collectors.joining(", ")));
  }

  /** The stitch with width and length, such as {@code zigzag 2.5 × 2}. */
  String stitch(Setting setting) {
    String name = setting.stitchName().replaceAll(" \\(.*", "");
    if (setting.dialLength() == null) {
      return name;
    }
    String length = Show.upTo(setting.dialLength(), 2);
    return setting.dialWidth() == null
        ? words.say("desk.pieces.stitch-length", name, length)
        : words.say("desk.pieces.stitch", name, Show.upTo(setting.dialWidth(), 2), length);
  }

  /** What became of the seam, such as {@code gave at 152 mm}. */
  String end(TestPiece piece) {
    PullReading pull = piece.measure().counting();
    return pull == null ? words.say("desk.pieces.not-pulled") : end(pull);
  }

  String end(PullReading pull) {
    return words.say(
        pull.end() == SeamEnd.GAVE ? "desk.pieces.gave" : "desk.pieces.held",
        Show.length(pull.endMm(), unit));
  }

  String stretch(TestPiece piece) {
    Double stretch = piece.measure().seamStretchPercent();
    PullReading pull = piece.measure().counting();
    if (stretch == null || pull == null) {
      return "–";
    }
    return (pull.end() == SeamEnd.HELD ? "≥ " : "") + Show.fixed(stretch, 1);
  }

  String fault(String key) {
    return faults.stream()
        .filter(each -> each.key().equals(key))
        .map(each -> each.name().replaceAll(" \\(.*", ""))
        .findFirst()
        .orElse(key);
  }
}
