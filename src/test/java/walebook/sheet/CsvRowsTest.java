package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.record.PieceCode;
import walebook.record.TestPiece;

/** The table of pieces as RFC 4180 text. */
class CsvRowsTest {

  @Test
  void everyPieceComesBackFromIt(@TempDir Path folder) throws IOException {
    try (HarbourClass harbour = HarbourClass.in(folder.resolve("class.walebook"), 40)) {
      harbour.sew(0, "=1+1, \"quoted\"\nand a line by José Núñez Muelle");
      TermFacts facts = harbour.facts(false);
      StringBuilder out = new StringBuilder();
      CsvRows.write(
          out,
          PieceColumns.all(facts.lookup(), HarbourClass.WORDS),
          facts.pieces(),
          facts.cover(),
          HarbourClass.WORDS,
          done -> {});
      // RFC 4180, 2.1: lines end in CRLF.
      assertThat(out.toString()).endsWith("\r\n");
      List<CSVRecord> rows =
          CSVFormat.RFC4180
              .builder()
              .setHeader()
              .get()
              .parse(new StringReader(out.toString()))
              .getRecords();
      assertThat(rows).hasSize(41);
      List<TestPiece> pieces = new ArrayList<>();
      facts.pieces().forEach(pieces::add);
      for (int i = 0; i < rows.size(); i++) {
        TestPiece piece = pieces.get(i);
        assertThat(rows.get(i).get("Piece")).isEqualTo(PieceCode.spoken(piece.code()));
        assertThat(Double.parseDouble(rows.get(i).get("Seam stretch (%)")))
            .isCloseTo(piece.measure().seamStretchPercent(), within(1e-9));
        assertThat(rows.get(i).get("Sewn on")).isEqualTo(piece.whose().sewnOn().toString());
        assertThat(rows.get(i).get("Layers")).isEqualTo("2");
        assertThat(rows.get(i).get("What was changed"))
            .isEqualTo(piece.parent() == null ? "" : "stitch width");
      }
      assertThat(rows.stream().map(row -> row.get("Remark")))
          .contains("'=1+1, \"quoted\"\nand a line by S02");
    }
  }
}
