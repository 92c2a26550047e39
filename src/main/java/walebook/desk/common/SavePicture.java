package walebook.desk.common;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Saves a picture as a PNG file, where the person chooses. */
public final class SavePicture {
  private static final String ENDING = ".png";

  private final Session session;
  private final Consumer<Notice> told;

  /**
   * Saving in one session.
   *
   * @param told where it was saved, or why it could not be
   */
  public SavePicture(Session session, Consumer<Notice> told) {
    this.session = session;
    this.told = told;
  }

  /**
   * Asks for a file and writes the picture there, away from the window's thread.
   *
   * @param name suggested, without an ending
   */
  public void save(WritableImage image, String name) {
    Path file =
        session
            .files()
            .save(PickFile.Kind.PICTURE, name.replaceAll("[^\\p{L}\\p{N}]+", "-") + ENDING);
    if (file == null) {
      return;
    }
    Path whole = file.toString().endsWith(ENDING) ? file : Path.of(file + ENDING);
    BufferedImage pixels = SwingFXUtils.fromFXImage(image, null);
    session
        .background()
        .run(
            progress -> write(pixels, whole),
            done -> tell("desk.common.picture-saved", done),
            fault -> {
              if (fault instanceof IOException) {
                tell("desk.common.picture-not-saved", whole);
              } else {
                session.unexpected(fault);
              }
            });
  }

  private void tell(String sayKey, Path file) {
    told.accept(new Notice(session.words().say(sayKey, file.getFileName()), null));
  }

  private static Path write(BufferedImage pixels, Path file) throws IOException {
    if (!ImageIO.write(pixels, "png", file.toFile())) {
      throw new IOException("no writer of PNG files");
    }
    return file;
  }
}
