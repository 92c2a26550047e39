package walebook.lesson;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Whether the pictures a lesson shows are in its folder, safe to open and told in words. */
final class CheckPictures {
  /** A plain file name of a picture: nothing that leads out of the folder fits. */
  private static final Pattern NAME =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,80}[.](svg|png|jpg|jpeg)");

  private final String folder;
  private final SortedMap<String, byte[]> pictures;
  private final List<Problem> problems = new ArrayList<>();

  private CheckPictures(String folder, SortedMap<String, byte[]> pictures) {
    this.folder = folder;
    this.pictures = pictures;
  }

  static boolean isPicture(String file) {
    return NAME.matcher(file).matches();
  }

  static List<Problem> check(
      String folder, String textFile, LessonText text, SortedMap<String, byte[]> pictures) {
    CheckPictures check = new CheckPictures(folder, pictures);
    text.pictures().forEach(each -> check.shown(textFile, each));
    pictures.forEach(check::content);
    return check.problems;
  }

  private void shown(String textFile, Block.Picture picture) {
    Place place = new Place.Spot(textFile, picture.line(), 1, "");
    String file = picture.file();
    if (file.contains("/") || file.contains("\\") || file.contains(":") || file.contains("%")) {
      refuse("pack.picture-outside", place, file, "");
    } else if (!isPicture(file)) {
      refuse("pack.picture-kind", place, file, "svg, png, jpg");
    } else if (!pictures.containsKey(file)) {
      String near = NearMiss.of(file, pictures.keySet());
      if (near == null) {
        refuse("pack.picture-missing", place, file, "");
      } else {
        refuse("pack.picture-missing-near", place, file, near);
      }
    } else if (!pictures.containsKey(picture.shownFile())) {
      refuse("pack.picture-no-png", place, file, picture.shownFile());
    }
    if (picture.alt().isBlank()) {
      refuse("pack.picture-alt", place, file, "");
    }
  }

  private void content(String file, byte[] bytes) {
    String path = folder + "/" + file;
    if (bytes.length > PackLimits.PICTURE_BYTES) {
      String most = PackLimits.PICTURE_BYTES / (1024 * 1024) + " MB";
      refuse("pack.too-big", new Place.Path(path), "", most);
    } else if (file.endsWith(".svg")) {
      problems.addAll(CheckSvg.check(path, bytes));
    } else {
      raster(path, bytes);
    }
  }

  private void raster(String path, byte[] bytes) {
    Integer side = longerSide(bytes);
    if (side == null) {
      refuse("pack.picture-broken", new Place.Path(path), "", "");
    } else if (side > PackLimits.PICTURE_SIDE) {
      String most = String.valueOf(PackLimits.PICTURE_SIDE);
      refuse("pack.picture-side", new Place.Path(path), String.valueOf(side), most);
    }
  }

  /** The longer side in pixels as the header says, without unpacking; null when it says none. */
  private static @Nullable Integer longerSide(byte[] bytes) {
    try (MemoryCacheImageInputStream in =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return null;
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        return Math.max(reader.getWidth(0), reader.getHeight(0));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) { // what readers throw on broken files varies
      return null;
    }
  }

  private void refuse(String code, Place place, String found, String wanted) {
    problems.add(Problem.refuse(code, place, found, wanted));
  }
}
