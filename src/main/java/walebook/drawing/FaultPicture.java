package walebook.drawing;

import java.util.List;
import java.util.Objects;
import walebook.words.Words;
import walebook.working.Message;

/** A small line picture of a fault, for choosing by eye. */
public record FaultPicture(FaultKind kind) implements Drawing {
  private static final double WIDE = 112;
  private static final double TALL = 72;

  public FaultPicture {
    Objects.requireNonNull(kind, "kind");
  }

  @Override
  public double leastWidth() {
    return WIDE;
  }

  @Override
  public double ownWidth() {
    return WIDE;
  }

  @Override
  public Picture at(double width, Words words) {
    Sketch sketch = new Sketch();
    switch (kind) {
      case POPPED_STITCHES -> FaultsOfThread.popped(sketch);
      case SKIPPED_STITCHES -> FaultsOfThread.skipped(sketch);
      case THREAD_NEST -> FaultsOfThread.nest(sketch);
      case GRINNING -> FaultsOfThread.grinning(sketch);
      case NEEDLE_HOLES -> FaultsOfCloth.holes(sketch);
      case LADDER -> FaultsOfCloth.ladder(sketch);
      case TUNNELLING -> FaultsOfShape.tunnel(sketch);
      case WAVY_SEAM -> FaultsOfShape.wavy(sketch);
      case LETTUCED_EDGE -> FaultsOfShape.lettuce(sketch);
      case PUCKERING -> FaultsOfShape.pucker(sketch);
      case HEM_FLIPPING -> FaultsOfCloth.flip(sketch);
      case BULK_AT_CROSSING -> FaultsOfCloth.bulk(sketch);
    }
    return sketch.picture(WIDE, TALL, new Message(kind.key(), List.of()));
  }
}
