package walebook.act.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.problem.Answer;

class AddPhotoTest {
  @TempDir Path folder;

  /** Red at the left, blue at the right. */
  private static byte[] jpeg(int wide, int high) throws IOException {
    BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < wide; x++) {
      for (int y = 0; y < high; y++) {
        image.setRGB(x, y, (x < wide / 2 ? Color.RED : Color.BLUE).getRGB());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", out);
    return out.toByteArray();
  }

  /** An EXIF segment with the orientation tag, laid out as CIPA DC-008 and TIFF 6.0 say. */
  private static byte[] withExif(byte[] jpeg, int orientation) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    byte[] place = "HARBOUR-TOWN-54.0N".getBytes(StandardCharsets.US_ASCII);
    int length = 2 + 6 + 8 + 2 + 12 + 4 + place.length;
    out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
    out.write("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII));
    out.write(new byte[] {0, 42, 0, 0, 0, 8, 0, 1});
    out.write(new byte[] {1, 18, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0});
    out.write(new byte[4]);
    out.write(place);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  @Test
  void aLargePhotoIsMadeSmallWithAThumbnail() throws IOException {
    Path file = Files.write(folder.resolve("large.jpg"), jpeg(4000, 1000));
    ReadyPhoto photo = AddPhoto.read(file).value();
    assertThat(photo.widthPx()).isEqualTo(1600);
    assertThat(photo.heightPx()).isEqualTo(400);
    BufferedImage small = ImageIO.read(new ByteArrayInputStream(photo.thumbnail()));
    assertThat(small.getWidth()).isEqualTo(240);
  }

  @Test
  void aPhotoHeldUprightComesUprightAndTellsNoPlace() throws IOException {
    byte[] bytes = withExif(jpeg(40, 20), 6);
    assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).contains("HARBOUR-TOWN");
    ReadyPhoto photo = AddPhoto.read(Files.write(folder.resolve("turned.jpg"), bytes)).value();
    assertThat(photo.widthPx()).isEqualTo(20);
    assertThat(photo.heightPx()).isEqualTo(40);
    // Orientation 6: the first row of pixels is the right side as seen, so the left comes on top.
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(photo.image()));
    assertThat(new Color(image.getRGB(10, 5)).getRed()).isGreaterThan(200);
    assertThat(new Color(image.getRGB(10, 35)).getBlue()).isGreaterThan(200);
    assertThat(new String(photo.image(), StandardCharsets.ISO_8859_1))
        .doesNotContain("HARBOUR-TOWN")
        .doesNotContain("Exif");
  }

  /**
   * A photo with a place in it: an EXIF segment whose GPS directory (CIPA DC-008, tags 0x8825, 1 to
   * 4) says 54° 7' 41" N 8° 51' 29" E, and an XMP segment that says so again.
   */
  private static byte[] withPlace(byte[] jpeg) throws IOException {
    java.nio.ByteBuffer tiff = java.nio.ByteBuffer.allocate(200);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 1);
    tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(26).putInt(0);
    tiff.putShort((short) 4);
    tiff.putShort((short) 1).putShort((short) 2).putInt(2).put(new byte[] {'N', 0, 0, 0});
    tiff.putShort((short) 2).putShort((short) 5).putInt(3).putInt(80);
    tiff.putShort((short) 3).putShort((short) 2).putInt(2).put(new byte[] {'E', 0, 0, 0});
    tiff.putShort((short) 4).putShort((short) 5).putInt(3).putInt(104).putInt(0);
    for (int each : new int[] {54, 1, 7, 1, 41, 1, 8, 1, 51, 1, 29, 1}) {
      tiff.putInt(each);
    }
    byte[] directory = java.util.Arrays.copyOf(tiff.array(), tiff.position());
    byte[] says = "54,7.68N 8,51.48E".getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    segment(out, "Exif\0\0", directory);
    segment(out, "http://ns.adobe.com/xap/1.0/\0", says);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static void segment(ByteArrayOutputStream out, String name, byte[] content)
      throws IOException {
    byte[] head = name.getBytes(StandardCharsets.US_ASCII);
    int length = 2 + head.length + content.length;
    out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
    out.write(head);
    out.write(content);
  }

  /** The markers of a JPEG's segments before the picture's own data (ISO/IEC 10918-1, annex B). */
  private static java.util.List<Integer> markers(byte[] jpeg) {
    java.util.List<Integer> found = new java.util.ArrayList<>();
    int at = 2;
    while (at + 4 <= jpeg.length && (jpeg[at] & 0xFF) == 0xFF && (jpeg[at + 1] & 0xFF) != 0xDA) {
      found.add(jpeg[at + 1] & 0xFF);
      at += 2 + ((jpeg[at + 2] & 0xFF) << 8 | (jpeg[at + 3] & 0xFF));
    }
    return found;
  }

  @Test
  void wherePhotosWereTakenStaysBehind() throws IOException {
    byte[] bytes = withPlace(jpeg(40, 20));
    assertThat(markers(bytes)).contains(0xE1);
    byte[] degrees = {0, 0, 0, 54, 0, 0, 0, 1, 0, 0, 0, 7, 0, 0, 0, 1};
    String place = new String(degrees, StandardCharsets.ISO_8859_1);
    assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).contains(place, "8,51.48E");
    ReadyPhoto photo = AddPhoto.read(Files.write(folder.resolve("placed.jpg"), bytes)).value();
    for (byte[] kept : java.util.List.of(photo.image(), photo.thumbnail())) {
      assertThat(new String(kept, StandardCharsets.ISO_8859_1))
          .doesNotContain(place)
          .doesNotContain("8,51.48E")
          .doesNotContain("Exif");
      // 0xE0 is the plain JFIF header; nothing else that a camera writes, and no comment (0xFE).
      assertThat(markers(kept)).contains(0xE0).noneMatch(each -> each > 0xE0);
    }
  }

  @Test
  void whatIsNoPhotoIsRefusedWithItsReason() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.jpg"), "only text");
    byte[] whole = jpeg(40, 20);
    Path half = Files.write(folder.resolve("half.jpg"), java.util.Arrays.copyOf(whole, 30));
    assertThat(code(AddPhoto.read(text))).isEqualTo("photo.not-a-photo");
    assertThat(code(AddPhoto.read(folder))).isEqualTo("photo.no-file");
    assertThat(code(AddPhoto.read(folder.resolve("missing.png")))).isEqualTo("photo.no-file");
    assertThat(code(AddPhoto.read(half))).isEqualTo("photo.damaged");
  }

  private static String code(Answer<ReadyPhoto> answer) {
    return answer.problems().get(0).code();
  }

  /** The place of its directory, four bytes behind the sign for TIFF, lies beyond all files. */
  @Test
  void aTurnNotedNowhereIsNoTurn() throws IOException {
    for (int last = 0; last < 16; last++) {
      byte[] bytes = withExif(jpeg(40, 20), 6);
      System.arraycopy(new byte[] {0x7F, -1, -1, (byte) (0xF0 + last)}, 0, bytes, 16, 4);
      Path file = Files.write(folder.resolve("nowhere.jpg"), bytes);
      assertThat(AddPhoto.read(file).value().widthPx()).isEqualTo(40);
    }
  }
}
