package walebook.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import walebook.record.Grain;
import walebook.record.PieceCode;
import walebook.words.Words;

/** Invented labels, and pages made in memory. */
final class Slips {
  static final Words WORDS = Words.english();
  private static final List<Grain> GRAINS = List.of(Grain.WALE, Grain.COURSE, Grain.BIAS);

  private Slips() {}

  static List<PieceSlip> of(int count, String who, String settings) {
    Random codes = new Random(42);
    List<PieceSlip> slips = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      slips.add(
          new PieceSlip(
              PieceCode.draw(codes),
              who,
              List.of(settings, "Grey jersey"),
              List.of(settings, "Grey jersey"),
              "machine ____",
              GRAINS.get(i % 3),
              "course",
              i == 0));
    }
    return slips;
  }

  /** Makes pages. */
  interface Work {
    Made on(Pages pages) throws IOException;
  }

  static ReadPdf pdf(Work work) throws IOException {
    return ReadPdf.of(bytes(work));
  }

  static byte[] bytes(Work work) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    work.on(new Pages(WORDS, out, PaperProgress.UNHEARD));
    return out.toByteArray();
  }
}
