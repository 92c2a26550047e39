package walebook.desk.typing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import walebook.act.card.Shorthand;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.FaultPlace;
import walebook.record.FaultWhen;
import walebook.record.Keyed;
import walebook.seam.Fault;
import walebook.words.Words;

/**
 * What can be chosen on a card, in words short enough for a cell. An entry holds keys; on the
 * screen stand the words, and the first letters of either are enough.
 */
final class CardChoices {
  private final Words words;
  private final PieceRoom room;

  CardChoices(Words words, PieceRoom room) {
    this.words = words;
    this.room = room;
  }

  /** The words to choose from in a field; empty for one that is typed. */
  List<String> all(PieceField field) {
    return List.copyOf(of(field).values());
  }

  /**
   * Those that a typed text can still become; all of them before the first letter, or when whole.
   */
  List<String> near(PieceField field, String typed) {
    String last = plain(typed.substring(typed.lastIndexOf(';') + 1).split(",", 2)[0]);
    List<String> all = all(field);
    return all.stream().anyMatch(each -> plain(each).equals(last))
        ? all
        : of(field).entrySet().stream()
            .filter(each -> begins(each, last))
            .map(Map.Entry::getValue)
            .toList();
  }

  /** A text of keys in words; what is no key stays as it is. */
  String says(PieceField field, String keys) {
    return inTurn(field, keys, "; ", ", ", Map::getOrDefault);
  }

  /** A text of words, of keys or of beginnings as keys; what is none stays as it was typed. */
  String keys(PieceField field, String typed) {
    return inTurn(field, typed, ";", ",", CardChoices::key);
  }

  /** A problem with the words that the card uses in the place of keys. */
  Problem worded(Problem problem) {
    PieceField field =
        problem.place() instanceof Place.Field at ? Keyed.find(PieceField.class, at.name()) : null;
    if (field == null || of(field).isEmpty()) {
      return problem;
    }
    boolean list = problem.code().equals("choice.unknown");
    return new Problem(
        problem.code(),
        problem.place(),
        says(field, problem.found()),
        list ? String.join(", ", all(field)) : says(field, problem.wanted()),
        problem.weight());
  }

  /** How one word is turned: the choices, the word, and the word again for when it is none. */
  private interface Turn {
    String of(Map<String, String> choices, String word, String otherwise);
  }

  private String inTurn(PieceField field, String text, String faults, String parts, Turn turn) {
    Map<String, String> choices = of(field);
    if (choices.isEmpty() || text.isBlank()) {
      return text;
    }
    if (field != PieceField.FAULTS) {
      return turn.of(choices, text.strip(), text);
    }
    Map<String, String> partWords = partWords();
    List<String> turned = new ArrayList<>();
    for (String fault : text.split(";", -1)) {
      List<String> each = new ArrayList<>();
      for (String part : fault.strip().split(",", -1)) {
        String word = part.strip();
        each.add(turn.of(each.isEmpty() ? choices : partWords, word, word));
      }
      turned.add(String.join(parts, each));
    }
    return turned.stream().filter(each -> !each.isEmpty()).collect(Collectors.joining(faults));
  }

  private static String key(Map<String, String> choices, String typed, String otherwise) {
    String start = plain(typed);
    if (start.isEmpty()) {
      return "";
    }
    List<String> near = new ArrayList<>();
    for (Map.Entry<String, String> each : choices.entrySet()) {
      if (plain(each.getKey()).equals(start) || plain(each.getValue()).equals(start)) {
        return each.getKey();
      }
      if (begins(each, start)) {
        near.add(each.getKey());
      }
    }
    return near.size() == 1 ? near.get(0) : otherwise;
  }

  private static boolean begins(Map.Entry<String, String> choice, String start) {
    return plain(choice.getKey()).startsWith(start) || plain(choice.getValue()).startsWith(start);
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
  }

  private Map<String, String> of(PieceField field) {
    Map<String, String> choices = new LinkedHashMap<>();
    if (field == PieceField.FAULTS) {
      for (Fault each : room.faults()) {
        choices.put(each.key(), each.name().replaceFirst(" \\(.*", ""));
      }
    } else {
      for (String key : Shorthand.keys(field, room)) {
        choices.put(key, words.say("desk.typing.choice." + key));
      }
    }
    return choices;
  }

  private Map<String, String> partWords() {
    Map<String, String> said = new LinkedHashMap<>();
    Stream.of(FaultPlace.values(), FaultWhen.values())
        .flatMap(Stream::of)
        .map(Keyed.class::cast)
        .forEach(each -> said.put(each.key(), words.say("common.choice." + each.key())));
    return said;
  }
}
