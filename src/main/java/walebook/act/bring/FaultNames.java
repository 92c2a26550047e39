package walebook.act.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.record.FaultPlace;
import walebook.record.FaultWhen;
import walebook.seam.Fault;
import walebook.words.Words;

/** Faults as our own workbook words them, or by their names alone, as the log form takes them. */
final class FaultNames {
  private final Pattern worded;
  private final Map<String, String> keys = new HashMap<>();
  private final Map<String, String> parts = new HashMap<>();

  FaultNames(Words words, List<Fault> faults) {
    // The sentence that writes a fault is the one that reads it.
    String[] around =
        words.say("sheet.fault", "\u0001", "\u0001", "\u0001", "\u0001").split("\u0001", -1);
    StringBuilder form = new StringBuilder();
    for (int i = 0; i < around.length; i++) {
      form.append(i == 0 ? "" : i == 1 ? "(.+)" : i == 3 ? "([0-3])" : "(.+?)")
          .append(Pattern.quote(around[i]));
    }
    worded = Pattern.compile(form.toString());
    for (Fault each : faults) {
      keys.put(each.name().toLowerCase(Locale.ROOT), each.key());
    }
    for (FaultPlace each : FaultPlace.values()) {
      parts.put(words.say("common.choice." + each.key()), each.key());
    }
    for (FaultWhen each : FaultWhen.values()) {
      parts.put(words.say("common.choice." + each.key()), each.key());
    }
  }

  String typed(String text) {
    List<String> all = new ArrayList<>();
    for (String each : text.split(";", -1)) {
      if (!each.isBlank()) {
        all.add(one(each.strip()));
      }
    }
    return String.join(";", all);
  }

  private String one(String text) {
    Matcher found = worded.matcher(text);
    if (found.matches()) {
      return String.join(
          ",",
          key(found.group(1)),
          parts.getOrDefault(found.group(2), found.group(2)),
          found.group(3),
          parts.getOrDefault(found.group(4), found.group(4)));
    }
    return key(text);
  }

  private String key(String name) {
    return keys.getOrDefault(name.strip().toLowerCase(Locale.ROOT), name);
  }
}
