package walebook.act.bring;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.sheet.in.MadeWorkbook;

/** Spoils files by chance: bytes, tags, attributes and numbers, lengths; the seed tells which. */
final class Mutator {
  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern NUMBER = Pattern.compile("(?<=[\">A-Z])[0-9]+");
  private static final List<String> ODD =
      List.of(
          "0",
          "-1",
          "1048577",
          "99999999999",
          "1e308",
          "NaN",
          "",
          "2147483648",
          "0.1",
          "=1+1",
          "+44 1",
          "&#x41;",
          "\u202Eabc",
          "😀",
          "#REF!",
          "AAAA1",
          "60",
          "-5");
  private static final List<String> CSV_ODD =
      List.of(
          "\"",
          "\"\"",
          ";",
          ",",
          "\t",
          "\r",
          "\n",
          "\0",
          "=1+1",
          "+44 20",
          "'",
          "\uFEFF",
          "السلام",
          "👩🏽‍🧵",
          "1/2",
          "3/4/2026",
          "1.000,5",
          "\u202E");

  private final Random random;

  Mutator(Random random) {
    this.random = random;
  }

  byte[] workbook(byte[] good) {
    return switch (random.nextInt(6)) {
      case 0 -> flipped(good);
      case 1 -> Arrays.copyOf(good, random.nextInt(good.length));
      case 2 -> spliced(good);
      default -> parts(good);
    };
  }

  byte[] text(byte[] good) {
    return switch (random.nextInt(4)) {
      case 0 -> flipped(good);
      case 1 -> spliced(good);
      default -> {
        StringBuilder text = new StringBuilder(new String(good, StandardCharsets.UTF_8));
        for (int i = 0; i <= random.nextInt(4); i++) {
          String odd = CSV_ODD.get(random.nextInt(CSV_ODD.size()));
          int at = random.nextInt(text.length() + 1);
          text.insert(at, random.nextInt(20) == 0 ? odd.repeat(40_000) : odd);
        }
        yield text.toString()
            .getBytes(random.nextBoolean() ? StandardCharsets.UTF_8 : StandardCharsets.UTF_16LE);
      }
    };
  }

  private byte[] flipped(byte[] good) {
    byte[] bytes = good.clone();
    for (int i = 0; i <= random.nextInt(8); i++) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private byte[] spliced(byte[] good) {
    int from = random.nextInt(good.length);
    int length = random.nextInt(Math.min(200, good.length - from) + 1);
    int to = random.nextInt(good.length + 1);
    byte[] bytes = new byte[good.length + length];
    System.arraycopy(good, 0, bytes, 0, to);
    System.arraycopy(good, from, bytes, to, length);
    System.arraycopy(good, to, bytes, to + length, good.length - to);
    return bytes;
  }

  private byte[] parts(byte[] good) {
    Map<String, byte[]> parts = MadeWorkbook.parts(good);
    List<String> names = new ArrayList<>(parts.keySet());
    String name = pick(names);
    String xml = new String(parts.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    switch (random.nextInt(7)) {
      case 0 -> parts.remove(name);
      case 1 -> parts.put("xl/vbaProject.bin", flipped(new byte[100]));
      case 2 ->
          parts.put(
              name,
              xml.substring(0, random.nextInt(xml.length() + 1)).getBytes(StandardCharsets.UTF_8));
      default -> {
        for (int i = 0; i <= random.nextInt(3); i++) {
          xml = random.nextBoolean() ? tags(xml) : numbers(xml);
        }
        parts.put(name, xml.getBytes(StandardCharsets.UTF_8));
      }
    }
    return MadeWorkbook.packed(parts);
  }

  /** The sheet's own part more often than the others. */
  private String pick(List<String> names) {
    List<String> sheets = names.stream().filter(each -> each.contains("sheet1")).toList();
    return random.nextBoolean() && !sheets.isEmpty()
        ? sheets.get(0)
        : names.get(random.nextInt(names.size()));
  }

  private String tags(String xml) {
    List<int[]> spans = spans(TAG, xml);
    if (spans.size() < 2) {
      return xml;
    }
    int[] one = spans.get(random.nextInt(spans.size()));
    int[] other = spans.get(random.nextInt(spans.size()));
    String tag = xml.substring(other[0], other[1]);
    return switch (random.nextInt(3)) {
      case 0 -> xml.substring(0, one[0]) + xml.substring(one[1]);
      case 1 -> xml.substring(0, one[0]) + tag + xml.substring(one[0]);
      default -> xml.substring(0, one[0]) + tag + xml.substring(one[1]);
    };
  }

  private String numbers(String xml) {
    List<int[]> spans = spans(NUMBER, xml);
    if (spans.isEmpty()) {
      return xml;
    }
    int[] one = spans.get(random.nextInt(spans.size()));
    return xml.substring(0, one[0]) + ODD.get(random.nextInt(ODD.size())) + xml.substring(one[1]);
  }

  private static List<int[]> spans(Pattern pattern, String text) {
    List<int[]> spans = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      spans.add(new int[] {matcher.start(), matcher.end()});
    }
    return spans;
  }
}
