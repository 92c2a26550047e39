package walebook.act.piece;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Iterator;
import java.util.UUID;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.PhotoInfo;
import walebook.record.Stamp;

/**
 * Takes a photo file into the book. The picture is drawn anew, so that place, time and camera that
 * the file may tell of stay behind.
 */
public final class AddPhoto {
  /** The longer side of a kept photo at most, in pixels. */
  public static final int MOST_PX = 1600;

  /** The longer side of a thumbnail at most, in pixels. */
  public static final int THUMBNAIL_PX = 240;

  private static final long MOST_BYTES = 60_000_000;
  private static final long MOST_PIXELS = 200_000_000;
  private static final int READ_PX = 3200;
  private static final String WANTED = "JPEG, PNG";

  private final Book book;
  private final Clock clock;

  public AddPhoto(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** Keeps a photo of a saved piece. */
  public void save(UUID pieceId, ReadyPhoto photo) {
    PhotoInfo info =
        new PhotoInfo(
            Ids.next(),
            pieceId,
            null,
            "",
            ReadyPhoto.MEDIA_TYPE,
            photo.widthPx(),
            photo.heightPx(),
            photo.thumbnail(),
            Stamp.fresh(clock.instant()));
    book.photos().add(info, photo.image());
  }

  /** Reads a file and makes it ready, or says why it can't be a photo. Takes its time. */
  public static Answer<ReadyPhoto> read(Path file) {
    try {
      if (!Files.isRegularFile(file)) {
        return refuse("photo.no-file", file);
      }
      if (Files.size(file) > MOST_BYTES) {
        return refuse("photo.too-large", file);
      }
      byte[] bytes = Files.readAllBytes(file);
      BufferedImage image = decode(bytes);
      if (image == null) {
        return refuse("photo.not-a-photo", file);
      }
      BufferedImage upright = PhotoTurn.of(bytes).turn(PhotoSize.within(image, MOST_PX));
      BufferedImage small = PhotoSize.within(upright, THUMBNAIL_PX);
      return Answer.good(
          new ReadyPhoto(
              String.valueOf(file.getFileName()),
              PhotoSize.jpeg(upright),
              upright.getWidth(),
              upright.getHeight(),
              PhotoSize.jpeg(small)));
    } catch (IIOException e) {
      return refuse("photo.damaged", file);
    } catch (IOException e) {
      return refuse("photo.unreadable", file);
    }
  }

  private static Answer<ReadyPhoto> refuse(String code, Path file) {
    String name = String.valueOf(file.getFileName());
    return Answer.bad(Problem.refuse(code, Place.field("photo"), name, WANTED));
  }

  /** The picture, read coarsely when it is very large; null when no reader knows the bytes. */
  private static @Nullable BufferedImage decode(byte[] bytes) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return null;
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long wide = reader.getWidth(0);
        long high = reader.getHeight(0);
        if (wide * high > MOST_PIXELS) {
          return null;
        }
        int step = (int) Math.max(1, Math.max(wide, high) / READ_PX);
        ImageReadParam how = reader.getDefaultReadParam();
        how.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, how);
      } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
        // What readers of pictures throw at bytes that make no sense to them.
        throw new IIOException("damaged", e);
      } finally {
        reader.dispose();
      }
    }
  }
}
