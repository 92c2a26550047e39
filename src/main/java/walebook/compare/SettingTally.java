package walebook.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.SeamEnd;
import walebook.statistics.Counted;
import walebook.statistics.Moments;

/** What the pieces of one setting come to; takes no more room for more pieces of the same hands. */
public final class SettingTally {
  private final ResultLine first;
  private final Map<UUID, Hand> hands = new LinkedHashMap<>();
  private final Values kept = new Values();
  private final Values aside = new Values();
  private int withFault;

  /** Values by what was measured. */
  static final class Values {
    final Counted gave = new Counted();
    final Counted held = new Counted();
    final Counted edge = new Counted();
    final Counted grade = new Counted();
    final Counted minutes = new Counted();
    int endsGave;
    int endsHeld;

    /** Of the seam, those of the pieces that held or of all others; otherwise all there are. */
    Counted of(MarkedValue value, boolean ofHeld) {
      return switch (value) {
        case SEAM_STRETCH -> ofHeld ? held : gave;
        case EDGE_CHANGE -> edge;
        case GRADE -> grade;
        case CLOTH_STRETCH -> throw new IllegalArgumentException("no value of a piece");
      };
    }

    void seam(@Nullable SeamEnd end, @Nullable Double stretch) {
      endsGave += end == SeamEnd.GAVE ? 1 : 0;
      endsHeld += end == SeamEnd.HELD ? 1 : 0;
      if (stretch != null) {
        (end == SeamEnd.HELD ? held : gave).add(stretch);
      }
    }

    void edge(@Nullable Double change) {
      if (change != null) {
        edge.add(change);
      }
    }

    void grade(@Nullable Integer look) {
      if (look != null) {
        grade.add(Double.valueOf(look));
      }
    }
  }

  /** What one student's pieces of it come to. */
  static final class Hand {
    final Moments gave = new Moments();
    final Moments edge = new Moments();
    final Moments grade = new Moments();
    final Moments minutes = new Moments();
    int pulled;
    int stretched;
    int pieces;
  }

  SettingTally(ResultLine first) {
    this.first = first;
  }

  /** A piece that stands for all in how it was set. */
  public ResultLine first() {
    return first;
  }

  /** Values that are not set aside. */
  Values kept() {
    return kept;
  }

  Values aside() {
    return aside;
  }

  Map<UUID, Hand> hands() {
    return hands;
  }

  int withFault() {
    return withFault;
  }

  /** How often each value came, those set aside among them. */
  public Counted all(MarkedValue value, boolean ofHeld) {
    Counted all = new Counted();
    all.addAll(kept.of(value, ofHeld));
    all.addAll(aside.of(value, ofHeld));
    return all;
  }

  /** One more piece; what is set aside of it counts apart. */
  void add(ResultLine piece, boolean seamAside, boolean edgeAside, boolean gradeAside) {
    Hand hand = hands.computeIfAbsent(piece.studentId(), key -> new Hand());
    hand.pieces++;
    withFault += piece.worstFault() >= SettingFound.SEEN_AT_ARMS_LENGTH ? 1 : 0;
    (seamAside ? aside : kept).seam(piece.end(), piece.seamStretch());
    (edgeAside ? aside : kept).edge(piece.edgeChange());
    (gradeAside ? aside : kept).grade(piece.grade());
    if (!seamAside) {
      seam(hand, piece);
    }
    if (!edgeAside && piece.edgeChange() != null) {
      hand.edge.add(piece.edgeChange());
    }
    if (!gradeAside && piece.grade() != null) {
      hand.grade.add(piece.grade());
    }
    Double minutes = piece.sewingMinutes();
    if (minutes != null) {
      // Nobody sets minutes aside: what was mistyped is put right on the piece.
      kept.minutes.add(minutes);
      hand.minutes.add(minutes);
    }
  }

  private static void seam(Hand hand, ResultLine piece) {
    hand.pulled += piece.end() == null ? 0 : 1;
    Double stretch = piece.seamStretch();
    if (stretch != null) {
      hand.stretched++;
      if (piece.end() != SeamEnd.HELD) {
        hand.gave.add(stretch);
      }
    }
  }
}
