package walebook.act.gather;

import java.util.ArrayList;
import java.util.List;
import walebook.book.gather.FromBook;
import walebook.words.Words;

/** What came of one student's book in few words: only what there was any of. */
public final class SayGathered {
  private final Words words;

  public SayGathered(Words words) {
    this.words = words;
  }

  /** The counts above none; what was left out is not among them. */
  public String counts(FromBook from) {
    List<String> parts = new ArrayList<>();
    if (from.added() > 0) {
      List<String> within = new ArrayList<>();
      add(within, "act.gathered.pieces", from.pieces());
      add(within, "act.gathered.photos", from.photos());
      parts.add(
          within.isEmpty()
              ? words.say("act.gathered.new", from.added())
              : words.say("act.gathered.new-with", from.added(), String.join(", ", within)));
    }
    add(parts, "act.gathered.there", from.taken());
    add(parts, "act.gathered.here", from.kept());
    add(parts, "act.gathered.same", from.same());
    add(parts, "act.gathered.decide", from.conflicts());
    return parts.isEmpty() ? words.say("act.gathered.nothing") : String.join(", ", parts);
  }

  private void add(List<String> parts, String key, int count) {
    if (count > 0) {
      parts.add(words.say(key, count));
    }
  }
}
