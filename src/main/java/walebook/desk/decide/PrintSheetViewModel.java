package walebook.desk.decide;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import walebook.act.print.PrintFile;
import walebook.act.print.PrintGarment;
import walebook.act.print.Printed;
import walebook.desk.common.Notice;
import walebook.desk.common.PickFile;
import walebook.desk.common.PrintedWords;
import walebook.desk.common.Session;
import walebook.problem.Answer;
import walebook.record.GarmentSheet;

/** Prints a garment sheet as it is typed, without the girths of the body. */
public final class PrintSheetViewModel {
  private static final String PAPER = "a4";

  private final Session session;
  private final SheetViewModel sheet;
  private final ReadOnlyBooleanWrapper printing = new ReadOnlyBooleanWrapper(this, "printing");

  public PrintSheetViewModel(Session session, SheetViewModel sheet) {
    this.session = session;
    this.sheet = sheet;
  }

  public ReadOnlyBooleanProperty printingProperty() {
    return printing.getReadOnlyProperty();
  }

  /** Asks where, then prints; says at the foot how it went. */
  public void print() {
    Answer<GarmentSheet> read = sheet.read();
    sheet.fields().show(read.problems());
    if (!read.isGood() || printing.get()) {
      return;
    }
    Set<String> open = sheet.unanswered(read.problems()).fields();
    if (!open.isEmpty()) {
      say(
          session
              .words()
              .say(
                  "desk.decide.answer-first",
                  open.stream()
                      .map(field -> SheetLabels.of(session.words(), field))
                      .sorted()
                      .collect(Collectors.joining("; "))));
      return;
    }
    Path file = session.files().save(PickFile.Kind.PAPER, name(read.value()));
    if (file == null) {
      return;
    }
    Map<String, Double> body = sheet.body();
    PrintGarment print = new PrintGarment(session.book(), session.words(), session.tables());
    printing.set(true);
    say(session.words().say("desk.decide.sheet.printing"));
    session
        .background()
        .run(
            progress ->
                print.print(
                    read.value(), body, false, PAPER, new PrintFile(file, true, progress::at)),
            this::end,
            this::failed);
  }

  private void end(Answer<Printed> answer) {
    printing.set(false);
    say(PrintedWords.of(session.words(), answer));
  }

  private void failed(Throwable fault) {
    printing.set(false);
    say("");
    session.unexpected(fault);
  }

  private void say(String sentence) {
    sheet.tell(new Notice(sentence, null));
  }

  private static String name(GarmentSheet sheet) {
    return sheet.name().replaceAll("[^\\p{L}\\p{N}]+", "-") + PrintFile.ENDING;
  }
}
