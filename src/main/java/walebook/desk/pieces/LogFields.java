package walebook.desk.pieces;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;

/** All fields of the log form together. */
final class LogFields {
  private final Map<PieceField, LogField> all = new EnumMap<>(PieceField.class);

  LogFields(Words words, Unit lengthUnit) {
    for (PieceField field : PieceField.values()) {
      String label = words.say("desk.pieces.field." + field.key());
      boolean length = field.kind() == PieceField.Kind.LENGTH;
      String unit = length ? ", " + lengthUnit.sign() : "";
      LogField made = new LogField(field, label + unit, lengthUnit);
      made.offer(FieldChoices.everywhere(words, field));
      all.put(field, made);
    }
  }

  LogField at(PieceField field) {
    LogField found = all.get(field);
    if (found == null) {
      throw new IllegalArgumentException("no such field: " + field);
    }
    return found;
  }

  void onEdit(Runnable edited) {
    all.values().forEach(each -> each.textProperty().addListener((from, old, now) -> edited.run()));
  }

  void offer(FieldChoices choices) {
    all.values().forEach(each -> each.offer(choices.of(each.field())));
  }

  void put(PieceEntry entry) {
    all.values().forEach(each -> each.put(entry.at(each.field())));
  }

  void ask(Set<PieceField> asked) {
    all.values().forEach(each -> each.askedProperty().set(asked.contains(each.field())));
  }

  /** What is typed in the fields that are asked for. */
  PieceEntry typed(PieceEntry start) {
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    all.values().stream()
        .filter(each -> each.askedProperty().get())
        .forEach(each -> typed.put(each.field(), each.textProperty().get()));
    return start.with(typed);
  }

  /** Whether all stands there that no piece can be saved without. */
  boolean hasNeeded() {
    return Stream.of(PieceField.CLOTH, PieceField.GRAIN, PieceField.STITCH)
        .noneMatch(each -> at(each).textProperty().get().isBlank());
  }

  void settleAll() {
    all.values().forEach(each -> each.settle(true));
  }

  /** Gives each field its first problem. */
  void found(List<Problem> problems) {
    for (LogField each : all.values()) {
      each.found(first(problems, each.field()));
    }
  }

  /** The first field in reading order that shows a problem, or null. */
  @Nullable PieceField firstInTheWay() {
    return all.values().stream()
        .filter(each -> each.askedProperty().get() && each.problemProperty().get() != null)
        .map(LogField::field)
        .findFirst()
        .orElse(null);
  }

  void each(Consumer<LogField> act) {
    all.values().forEach(act);
  }

  private static @Nullable Problem first(List<Problem> problems, PieceField field) {
    Place place = Place.field(field.key());
    return problems.stream().filter(each -> each.place().equals(place)).findFirst().orElse(null);
  }
}
