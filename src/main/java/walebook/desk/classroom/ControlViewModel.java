package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskControl;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.compare.ControlFindings;
import walebook.compare.FairQuestion;
import walebook.compare.FromControl;
import walebook.compare.Outcome;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.drawing.Drawing;
import walebook.drawing.ValueBar;
import walebook.record.PieceCode;
import walebook.statistics.Interval;
import walebook.words.Words;

/** Each piece against its student's own control: dots, how many, the range, a sentence. */
public final class ControlViewModel extends AskingModel<ControlViewModel.Found> {
  /**
   * What was found.
   *
   * @param rate true when the outcome is a rate, of which no difference can be taken
   * @param same what is alike in all pieces and controls; may be empty
   * @param says of all settings together
   * @param plot null when no piece has a control beside it
   * @param rows one for each setting
   * @param logged pieces in what is asked, whether they can be read against a control or not
   */
  record Found(
      boolean rate,
      String same,
      List<String> says,
      @Nullable DotPlot plot,
      List<Row> rows,
      int logged,
      int setAside) {}

  /**
   * A setting against the controls.
   *
   * @param range least and greatest difference
   * @param bar its pieces as dots; nought is the own control
   * @param can what can be said, in a few words
   * @param says the same in a sentence
   */
  record Row(
      String setting,
      int pieces,
      int students,
      double middle,
      String range,
      Drawing bar,
      String can,
      String says,
      List<Piece> links) {}

  /** A piece and how its link reads. */
  record Piece(UUID id, String says) {}

  public ControlViewModel(FiltersViewModel filters) {
    super(filters);
  }

  @Override
  Asking.Work<Found> ask(CompareFair.Which which) {
    FairQuestion question = filters().question();
    AskControl act = new AskControl(session().book());
    Words words = words();
    return progress ->
        question.outcome().isRate()
            ? new Found(true, "", List.of(), null, List.of(), 0, 0)
            : worded(act.ask(which, question), question, words);
  }

  /** Asks about the seam's share, since a rate has no difference from a control. */
  void askShare() {
    filters().outcomeProperty().set(Outcome.SEAM_SHARE);
  }

  private static Found worded(FromControl found, FairQuestion question, Words words) {
    FairDrawn drawn = new FairDrawn(words);
    ControlFindings says =
        new ControlFindings(
            found, levels -> drawn.setting(found.factors(), levels), question.confidence());
    List<DotRow> dots = new ArrayList<>();
    for (FromControl.Row row : found.rows()) {
      Interval interval = says.interval(row);
      dots.add(
          new DotRow(
              drawn.setting(found.factors(), row.levels()),
              row.apart().stream()
                  .map(each -> new DotRow.Dot(each.difference(), each.piece().atLeast()))
                  .toList(),
              row.perStudent() == null ? null : Double.valueOf(row.perStudent().mean()),
              interval == null ? null : interval.low(),
              interval == null ? null : interval.high(),
              0));
    }
    List<ValueBar> bars = ValueBar.aroundNought(dots);
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < dots.size(); i++) {
      FromControl.Row row = found.rows().get(i);
      rows.add(row(row, dots.get(i), bars.get(i), says, words));
    }
    String axis = words.say("desk.class.control.axis", drawn.axis(question.outcome()));
    String same = new SettingWords(words).same(found.same());
    return new Found(
        false,
        same.isEmpty() ? "" : words.say("desk.class.same", same),
        says.together().stream().map(words::say).toList(),
        dots.isEmpty() ? null : new DotPlot(axis, dots, null),
        rows,
        found.counted().logged(),
        found.counted().setAside());
  }

  private static Row row(
      FromControl.Row row, DotRow dots, Drawing bar, ControlFindings says, Words words) {
    List<FromControl.Apart> apart = row.apart();
    double low = apart.get(0).difference();
    double high = apart.get(apart.size() - 1).difference();
    String least = FairViewModel.number(low);
    return new Row(
        dots.label(),
        apart.size(),
        row.students(),
        dots.median() == null ? (low + high) / 2 : dots.median(),
        apart.size() == 1 ? least : least + " … " + FairViewModel.number(high),
        bar,
        words.say(can(says.side(row))),
        words.say(says.row(row)),
        apart.stream()
            .map(
                each ->
                    new Piece(
                        each.piece().pieceId(),
                        words.say(
                            "desk.class.control.piece",
                            PieceCode.spoken(each.piece().code()),
                            each.piece().who(),
                            FairViewModel.number(each.difference()))))
            .toList());
  }

  private static String can(ControlFindings.Side side) {
    return switch (side) {
      case ABOVE -> "desk.class.control.above";
      case BELOW -> "desk.class.control.below";
      case EITHER -> "desk.class.control.either";
      case TOO_FEW -> "desk.class.control.too-few";
      case NO_SCATTER -> "desk.class.control.no-scatter";
      case SOME_HELD -> "desk.class.control.some-held";
      case ONLY_HELD -> "desk.class.control.only-held";
    };
  }
}
