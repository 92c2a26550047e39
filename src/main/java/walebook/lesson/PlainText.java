package walebook.lesson;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Bytes of a text file as text: UTF-8 or refused at the first byte that is not. */
final class PlainText {
  private PlainText() {}

  /**
   * The text, without a byte order mark, its lines ended by a line feed.
   *
   * @param file name for the problem's place
   * @param most how many bytes at most
   */
  static Answer<String> of(String file, byte[] bytes, long most) {
    if (bytes.length > most) {
      return Answer.bad(
          Problem.refuse("pack.too-big", new Place.Path(file), "", most / 1024 + " KB"));
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      String found = "0x" + HexFormat.of().withUpperCase().toHexDigits(bytes[in.position()]);
      return Answer.bad(Problem.refuse("pack.not-utf8", after(file, text), found, "UTF-8"));
    }
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return Answer.good(plain.replace("\r\n", "\n").replace('\r', '\n'));
  }

  /** The spot just behind a text. */
  private static Place after(String file, String text) {
    int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
    int column = text.length() - text.lastIndexOf('\n');
    return new Place.Spot(file, line, column, "");
  }
}
