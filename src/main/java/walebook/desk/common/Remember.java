package walebook.desk.common;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Small choices of a place that are there again at the next start. Called from any thread. */
public interface Remember {
  /** What was kept under a name; empty when nothing was. */
  String recall(String name);

  void keep(String name, String value);

  /** Remembers until the window is closed. */
  static Remember forNow() {
    Map<String, String> kept = new ConcurrentHashMap<>();
    return new Remember() {
      @Override
      public String recall(String name) {
        return kept.getOrDefault(name, "");
      }

      @Override
      public void keep(String name, String value) {
        kept.put(name, value);
      }
    };
  }
}
