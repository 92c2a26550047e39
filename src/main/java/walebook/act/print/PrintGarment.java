package walebook.act.print;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.act.decide.AnswerGarment;
import walebook.book.Book;
import walebook.drawing.Drawing;
import walebook.drawing.GarmentPictures;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.GarmentQuestion;
import walebook.garment.Girth;
import walebook.garment.Link;
import walebook.garment.LinkKind;
import walebook.paper.GarmentPaper;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.GarmentSheet;
import walebook.record.Keyed;
import walebook.record.StitchChoice;
import walebook.tables.SharedTables;
import walebook.words.Words;
import walebook.working.Step;

/** Prints a garment sheet's answers; a body's girths only when that is explicitly asked for. */
public final class PrintGarment {
  /** With the band's stretch these tell the girth that it passes over. */
  private static final Set<String> TELLING_BANDS =
      Set.of(
          "garment.advice.band-over",
          "garment.advice.band-opening",
          "garment.advice.band-near-flat");

  /** More would not leave the answers one page. */
  private static final int DRAWINGS = 3;

  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintGarment(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  /**
   * Prints a saved sheet.
   *
   * @param girths whether the body's girths, and numbers that would tell them, are printed
   */
  public Answer<Printed> print(UUID sheetId, boolean girths, PaperSize size, PrintFile file) {
    GarmentSheet sheet = book.garments().find(sheetId);
    if (sheet == null) {
      return Answer.bad(
          Problem.refuse("choice.unknown", Place.field("garment"), sheetId.toString(), ""));
    }
    return print(sheet, book.garments().bodyOf(sheet.id()), girths, size.key(), file);
  }

  /**
   * Prints a sheet as it is typed; it need not be saved.
   *
   * @param body the body's girths in mm by key
   * @param girths whether they, and numbers that would tell them, are printed
   * @param size key of the paper's size
   */
  public Answer<Printed> print(
      GarmentSheet sheet, Map<String, Double> body, boolean girths, String size, PrintFile file) {
    GarmentPaper paper = book.inOneStep(() -> paper(sheet, body, girths));
    return file.write(words, pages -> pages.garment(Keyed.of(PaperSize.class, size), paper));
  }

  private GarmentPaper paper(GarmentSheet sheet, Map<String, Double> body, boolean girths) {
    AnswerGarment answer = new AnswerGarment(book, tables);
    GarmentQuestion question = answer.question(sheet, body);
    GarmentAnswers answers = answer.answer(sheet, body);
    boolean keepBack = !girths && !body.isEmpty();
    return new GarmentPaper(
        sheet.name(),
        lines(sheet, question),
        answers.verdict(),
        answers.isReckonedOnly(),
        answers.advice().stream().map(each -> advice(each, keepBack)).toList(),
        answers.checks().stream().map(each -> line(each, keepBack)).toList(),
        drawings(question, !keepBack),
        cautions(answers),
        girths(body, keepBack));
  }

  private List<String> lines(GarmentSheet sheet, GarmentQuestion question) {
    Unit unit = book.info().lengthUnit();
    Cloth cloth = sheet.clothId() == null ? null : book.cloths().find(sheet.clothId());
    List<String> lines = new ArrayList<>();
    lines.add(question.kind().name());
    lines.add(
        words.say(
            "act.print.garment.cloth",
            cloth == null ? "–" : cloth.name(),
            words.say(question.round().sayKey())));
    Double from = sheet.pattern().gaugeFromMm();
    Double to = sheet.pattern().gaugeToMm();
    if (from != null && to != null) {
      lines.add(
          words.say("act.print.garment.gauge", Show.length(from, unit), Show.length(to, unit)));
    }
    String stitch = stitch(sheet);
    lines.add(words.say("act.print.garment.stitch", stitch));
    Double pattern = sheet.pattern().allowanceMm();
    Double sewn = sheet.sewing().allowanceMm();
    if (pattern != null && sewn != null) {
      lines.add(words.say("act.print.garment.allowance", Show.mm(pattern), Show.mm(sewn)));
    }
    return lines;
  }

  private String stitch(GarmentSheet sheet) {
    PieceWording wording = new PieceWording(words, tables, book);
    StitchChoice stitch = sheet.sewing().stitch();
    return wording.stitch(stitch.stitchType(), stitch.dialWidth(), stitch.dialLength());
  }

  /** The steps go on to the body; of what they come to, only what tells no girth is said. */
  private GarmentPaper.Line line(Check check, boolean keepBack) {
    boolean kept = keepBack && check.kind().tellsBody();
    return new GarmentPaper.Line(
        check.verdict(),
        check.isReckonedOnly(),
        words.say(check.about()),
        words.say(kept ? check.saysWithoutGirths() : check.working().says()),
        check.weakest() == null ? "" : weakest(check.weakest()),
        kept ? List.of() : check.working().steps().stream().map(this::step).toList());
  }

  private String step(Step step) {
    return words.say("act.print.garment.step", words.say(step.says()), step.numbers());
  }

  private String weakest(Link link) {
    String name = words.say(link.kind().sayKey());
    String percent = Show.percent(link.percent());
    if (link.kind() == LinkKind.CLOTH && link.isKnown()) {
      String measured = words.say("act.print.garment.measured", name, percent);
      return words.say("act.print.garment.weakest", measured);
    }
    String evidence =
        switch (link.basis()) {
          case GAVE ->
              words.say("act.print.garment.gave", name, percent, link.pieces(), link.students());
          case HELD ->
              words.say("act.print.garment.held", name, percent, link.pieces(), link.students());
          case MODEL -> words.say("act.print.garment.model", name, percent);
          case UNKNOWN -> words.say("act.print.garment.unknown", name);
        };
    return words.say("act.print.garment.weakest", evidence);
  }

  /** The sentence, or the same without the number that would tell a girth. */
  private String advice(Advice advice, boolean keepBack) {
    String whole = words.say(advice.says());
    if (!keepBack) {
      return whole;
    }
    List<String> args = advice.says().args();
    String edge = args.isEmpty() ? "" : args.get(0);
    return switch (advice.action()) {
      case OTHER_CLOTH -> words.say("act.print.garment.other-cloth");
      case WIDEN_OPENING -> words.say("act.print.garment.widen", edge);
      case OTHER_LINK -> words.say("act.print.garment.other-link", edge);
      case SEW_TEST_PIECE -> words.say("act.print.garment.sew", edge);
      case CHANGE_BAND ->
          TELLING_BANDS.contains(advice.says().key())
              ? words.say("act.print.garment.change-band", edge)
              : whole;
      case TURN_PIECES, CHANGE_ALLOWANCE, MEASURE_CLOTH, MEASURE_AGAIN -> whole;
    };
  }

  private List<Drawing> drawings(GarmentQuestion question, boolean withBody) {
    return GarmentPictures.of(question, book.info().lengthUnit()).stream()
        .filter(each -> withBody || each.kind() != GarmentPictures.Kind.RINGS)
        .filter(each -> question.edgeGain() != 0 || each.kind() != GarmentPictures.Kind.ALLOWANCE)
        .map(GarmentPictures.One::drawing)
        .limit(DRAWINGS)
        .toList();
  }

  private List<String> cautions(GarmentAnswers answers) {
    return answers.cautions().stream().map(each -> words.say(each.says())).toList();
  }

  private String girths(Map<String, Double> body, boolean keepBack) {
    if (body.isEmpty()) {
      return "";
    }
    if (keepBack) {
      return words.say("act.print.garment.kept-back");
    }
    Map<Girth, Double> inOrder = new EnumMap<>(Girth.class);
    for (Girth girth : Girth.values()) {
      Double mm = body.get(girth.key());
      if (mm != null) {
        inOrder.put(girth, mm);
      }
    }
    String all =
        inOrder.entrySet().stream()
            .map(
                each ->
                    words.say(each.getKey().sayKey())
                        + " "
                        + Show.length(each.getValue(), book.info().lengthUnit()))
            .collect(Collectors.joining(", "));
    return words.say("act.print.garment.girths", all);
  }
}
