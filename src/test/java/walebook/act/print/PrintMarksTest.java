package walebook.act.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.TagEvidence;
import walebook.book.Classroom;
import walebook.paper.PaperSize;
import walebook.paper.ReadPdf;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.PieceCode;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** The mark sheet on paper, read back. */
class PrintMarksTest {
  @TempDir Path folder;

  private ReadPdf print(PaperClass in, PaperSize size, Naming naming) throws IOException {
    Path file = folder.resolve(UUID.randomUUID() + ".pdf");
    new PrintMarks(in.room.book, PaperClass.WORDS, ZoneOffset.UTC)
        .print(
            new PrintScope(in.room.schoolClass.id(), null, null, naming),
            size,
            PaperClass.file(file))
        .value();
    return ReadPdf.of(file);
  }

  private static TestPiece assessed(PaperClass in) {
    TestPiece like = in.room.piece(SeamEnd.GAVE, 140);
    TestPiece first = in.log(in.plan(in.room.first, 1).get(0), like);
    TestPiece second = in.log(in.plan(in.room.second, 1).get(0), like);
    List<Criterion> criteria =
        new KeepCriteria(in.room.book, Classroom.CLOCK)
            .addList(in.room.schoolClass.id(), "1.1 Chooses a stitch\n1.2 Works safely", "")
            .value();
    TagEvidence tag = new TagEvidence(in.room.book);
    tag.piece(criteria.get(0).id(), first.id(), true);
    tag.lesson(criteria.get(1).id(), in.lesson.id(), true);
    CheckPiece check = new CheckPiece(in.room.book, Classroom.CLOCK);
    check.check(first.id(), CheckedBy.SELF, Map.of("choice-mark", "3")).value();
    check
        .check(
            first.id(),
            CheckedBy.TUTOR,
            Map.of("choice-mark", "1", "reasoning-mark", "2", "help-given", "hands-on"))
        .value();
    return second;
  }

  @Test
  void marksStandSideBySideWithCoverageAndLinesToSign() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      TestPiece unseen = assessed(in);
      try (ReadPdf pdf = print(in, PaperSize.A4, Naming.NAME)) {
        assertThat(pdf.text())
            .contains("Mark sheet", "Ada Pier", "Bo Quay", "3 | 1", "– | 2", "– | hands-on")
            .contains("passes in reasoning", "1.1, 1.2")
            .contains("Nobody has looked over yet", PieceCode.spoken(unseen.code()))
            .contains("reasoning · 1 of 1", "to check · pieces 1", "no piece")
            .contains("1.2 Works safely")
            .contains("Records of the class: 4 (pieces 2, checks 2, comments 0)")
            .contains("2026-10-05 18:30", "Tutor", "Assessor", "Date");
        assertThat(pdf.sizeMm(0)[0]).isCloseTo(297, org.assertj.core.api.Assertions.within(0.5));
        assertThat(pdf.fonts()).isNotEmpty().allMatch(font -> font.isEmbedded());
      }
    }
  }

  @Test
  void withCodesNobodyIsNamedAndLetterFits() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      assessed(in);
      try (ReadPdf pdf = print(in, PaperSize.LETTER, Naming.CODE)) {
        assertThat(pdf.text()).contains("S01", "S02").doesNotContain("Ada", "Quay");
        assertThat(pdf.sizeMm(0)[1]).isCloseTo(215.9, org.assertj.core.api.Assertions.within(0.5));
      }
    }
  }

  @Test
  void aClassWithoutCriteriaStillHasASheetToSign() throws IOException {
    try (PaperClass in = PaperClass.in(folder);
        ReadPdf pdf = print(in, PaperSize.A4, Naming.NAME)) {
      assertThat(pdf.text())
          .contains("No piece was looked over", "The class has no records yet", "Assessor")
          .doesNotContain("Criteria coverage");
    }
  }

  @Test
  void manyCriteriaAndLongNamesRunOverPagesAndNothingIsLost() throws IOException {
    try (PaperClass in = PaperClass.in(folder)) {
      in.enrol("Wilhelmina Featherstonehaugh-Ottoline van der Waterschoot", 20);
      StringBuilder list = new StringBuilder();
      for (int i = 1; i <= 23; i++) {
        list.append("C").append(i).append(" asks for something, the long way round, in words ");
        list.append("that go on and on until the line is full and then some\n");
      }
      new KeepCriteria(in.room.book, Classroom.CLOCK)
          .addList(in.room.schoolClass.id(), list.toString(), "")
          .value();
      try (ReadPdf pdf = print(in, PaperSize.A4, Naming.NAME)) {
        assertThat(pdf.pages()).isGreaterThan(3);
        assertThat(pdf.text()).contains("C1 ", "C23", "Waterschoot 20");
        assertThat(pdf.text(pdf.pages() - 1)).contains("Assessor", "no records yet");
      }
    }
  }
}
