package walebook.desk.pieces;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.act.history.PieceTimeline;
import walebook.desk.common.Session;
import walebook.words.Words;

/** What happened to a piece, in the form's words. */
final class TimelineLines {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final Session session;
  private final Words words;
  private final PieceTimeline timeline;

  TimelineLines(Session session, boolean namesHidden) {
    this.session = session;
    this.words = session.words();
    this.timeline = new PieceTimeline(session.book(), session.tables(), words, namesHidden);
  }

  List<WholePiece.Line> of(UUID pieceId) {
    return timeline.of(pieceId).stream().map(this::line).toList();
  }

  private WholePiece.Line line(PieceTimeline.Event event) {
    String when = WHEN.withZone(session.clock().getZone()).format(event.at());
    String fields = event.fields().stream().map(this::field).collect(Collectors.joining("\n"));
    return new WholePiece.Line(
        words.say("desk.pieces.timeline.when-who", when, event.who()),
        fields.isEmpty() ? event.what() : event.what() + "\n" + fields);
  }

  private String field(PieceTimeline.Field field) {
    return words.say(
        "desk.pieces.timeline.from-to",
        words.say("desk.pieces.field." + field.field().key()),
        field.from().isEmpty() ? "–" : field.from(),
        field.to().isEmpty() ? "–" : field.to());
  }
}
