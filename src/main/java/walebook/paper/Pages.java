package walebook.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import walebook.words.Words;

/** Makes each kind of pages and writes them as one PDF. */
public final class Pages {
  private final Words words;
  private final OutputStream out;
  private final PaperProgress progress;

  /**
   * Pages to be written.
   *
   * @param progress told how far it is; may stop it by throwing
   */
  public Pages(Words words, OutputStream out, PaperProgress progress) {
    this.words = words;
    this.out = out;
    this.progress = progress;
  }

  /**
   * Labels for test pieces.
   *
   * @param start the first label to print on, from 1
   * @param none said where there are no slips
   */
  public Made labels(LabelGrid grid, List<PieceSlip> slips, int start, String none)
      throws IOException {
    try (Sheets sheets = Sheets.upright(grid.paper())) {
      LabelSheet.draw(sheets, grid, slips, start, words, progress);
      if (slips.isEmpty()) {
        new Flow(sheets).text(none, Type.BODY);
      }
      return write(sheets, words.say("paper.labels"));
    }
  }

  public Made cards(PaperSize size, List<RecordCard> cards) throws IOException {
    try (Sheets sheets = Sheets.upright(size)) {
      CardSheet.draw(sheets, cards, words, progress);
      return write(sheets, words.say("paper.cards"));
    }
  }

  public Made wallGrid(PaperSize size, WallGrid grid) throws IOException {
    try (Sheets sheets = Sheets.across(size)) {
      WallGridPages.draw(sheets, grid, words, progress);
      return write(sheets, grid.title());
    }
  }

  public Made plan(PaperSize size, PlanPaper plan) throws IOException {
    try (Sheets sheets = Sheets.upright(size)) {
      PlanPages.draw(sheets, plan, words, progress);
      return write(sheets, plan.title());
    }
  }

  public Made kit(PaperSize size, KitPaper kit) throws IOException {
    try (Sheets sheets = Sheets.upright(size)) {
      KitPages.draw(sheets, kit, words);
      return write(sheets, kit.title());
    }
  }

  public Made handOut(PaperSize size, HandOutPaper handOut) throws IOException {
    try (Sheets sheets = HandOutFit.page(size, handOut, words)) {
      return write(sheets, handOut.pack().about().title());
    }
  }

  public Made term(PaperSize size, TermPaper term) throws IOException {
    try (Sheets sheets = Sheets.upright(size)) {
      TermPages.draw(sheets, term, words, progress);
      return write(sheets, term.who());
    }
  }

  public Made marks(PaperSize size, MarkPaper marks) throws IOException {
    try (Sheets sheets = Sheets.across(size)) {
      MarkPages.draw(sheets, marks, words, progress);
      return write(sheets, marks.title());
    }
  }

  public Made garment(PaperSize size, GarmentPaper garment) throws IOException {
    try (Sheets sheets = GarmentPage.fitting(size, garment, words)) {
      return write(sheets, garment.name());
    }
  }

  private Made write(Sheets sheets, String title) throws IOException {
    sheets.write(out, title);
    progress.at(1);
    return Made.of(sheets);
  }
}
