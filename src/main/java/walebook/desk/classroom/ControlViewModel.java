package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskControl;
import walebook.act.classroom.CompareFair;
import walebook.compare.ControlFindings;
import walebook.compare.FairQuestion;
import walebook.compare.FromControl;
import walebook.compare.Outcome;
import walebook.desk.common.Wish;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.record.PieceCode;
import walebook.statistics.Interval;
import walebook.words.Words;

/** Each piece against its student's own control: dots, how many, the range, a sentence. */
public final class ControlViewModel {
  private final FiltersViewModel filters;
  private final Asking<Found> asking;

  /**
   * What was found.
   *
   * @param rate true when the outcome is a rate, of which no difference can be taken
   * @param plot null when no piece has a control beside it
   * @param rows one for each setting
   */
  record Found(
      boolean rate, List<String> says, @Nullable DotPlot plot, List<Row> rows, int setAside) {}

  /**
   * A setting against the controls.
   *
   * @param range least and greatest difference
   * @param mean over students
   * @param limits its interval
   */
  record Row(
      String setting,
      int pieces,
      int students,
      String range,
      String mean,
      String limits,
      List<Piece> links) {}

  /** A piece and how its link reads. */
  record Piece(UUID id, String says) {}

  public ControlViewModel(FiltersViewModel filters) {
    this.filters = filters;
    Words words = filters.session().words();
    AskControl act = new AskControl(filters.session().book());
    asking =
        new Asking<>(
            filters,
            (in, hidden) -> {
              CompareFair.Which which = filters.which(in.id(), hidden);
              FairQuestion question = filters.question();
              return () ->
                  question.outcome().isRate()
                      ? new Found(true, List.of(), null, List.of(), 0)
                      : worded(act.ask(which, question), question, words);
            });
  }

  ReadOnlyObjectProperty<@Nullable Found> foundProperty() {
    return asking.foundProperty();
  }

  Asking<Found> asking() {
    return asking;
  }

  FiltersViewModel filters() {
    return filters;
  }

  /** Asks about the seam's share, since a rate has no difference from a control. */
  void askShare() {
    filters.outcomeProperty().set(Outcome.SEAM_SHARE);
  }

  void openPiece(UUID pieceId) {
    asking.session().wish(new Wish("pieces", Wish.What.OPEN, pieceId));
  }

  private static Found worded(FromControl found, FairQuestion question, Words words) {
    FairDrawn drawn = new FairDrawn(words);
    List<String> says =
        ControlFindings.of(
                found, levels -> drawn.setting(found.factors(), levels), question.confidence())
            .stream()
            .map(words::say)
            .toList();
    List<Row> rows = new ArrayList<>();
    List<DotRow> dots = new ArrayList<>();
    for (FromControl.Row row : found.rows()) {
      String setting = drawn.setting(found.factors(), row.levels());
      Interval interval = row.interval(question.confidence());
      Double mean = row.perStudent() == null ? null : Double.valueOf(row.perStudent().mean());
      rows.add(row(row, setting, mean, interval, words));
      dots.add(
          new DotRow(
              setting,
              row.apart().stream()
                  .map(each -> new DotRow.Dot(each.difference(), each.piece().atLeast()))
                  .toList(),
              mean,
              interval == null ? null : interval.low(),
              interval == null ? null : interval.high(),
              0));
    }
    String axis = words.say("desk.class.control.axis", drawn.axis(question.outcome()));
    return new Found(
        false, says, dots.isEmpty() ? null : new DotPlot(axis, dots, null), rows, found.setAside());
  }

  private static Row row(
      FromControl.Row row,
      String setting,
      @Nullable Double mean,
      @Nullable Interval interval,
      Words words) {
    List<FromControl.Apart> apart = row.apart();
    String least = FairViewModel.number(apart.get(0).difference());
    String most = FairViewModel.number(apart.get(apart.size() - 1).difference());
    return new Row(
        setting,
        apart.size(),
        row.students(),
        apart.size() == 1 ? least : least + " … " + most,
        FairViewModel.number(mean),
        interval == null ? "–" : FairViewModel.limits(interval.low(), interval.high()),
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
}
