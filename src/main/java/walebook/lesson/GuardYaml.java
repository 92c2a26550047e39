package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Looks through YAML as it streams by, before anything is built of it: a pack needs no aliases, no
 * tags, no second document and no depth, and what uses them is refused where it stands.
 */
final class GuardYaml {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int depth;
  private int entries;
  private int documents;

  private GuardYaml(String file) {
    this.file = file;
  }

  static List<Problem> check(String file, String yaml, LoadSettings settings) {
    return new GuardYaml(file).check(yaml, settings);
  }

  private List<Problem> check(String yaml, LoadSettings settings) {
    try {
      for (Event event : new Parse(settings).parseString(yaml)) {
        look(event);
        if (depth > PackLimits.DEPTH || entries > PackLimits.ENTRIES) {
          break;
        }
      }
    } catch (MarkedYamlEngineException e) {
      problems.add(YamlSlip.of(e, place(e.getProblemMark())));
    } catch (YamlEngineException e) {
      problems.add(Problem.refuse("pack.yaml", place(Optional.empty()), said(e), ""));
    }
    return List.copyOf(problems);
  }

  private void look(Event event) {
    if (event instanceof DocumentStartEvent && ++documents == 2) {
      refuse("pack.yaml-documents", event, "---", "1");
    } else if (event instanceof AliasEvent alias) {
      refuse("pack.yaml-alias", event, "*" + alias.getAlias().getValue(), "");
    } else if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
      refuse("pack.yaml-alias", event, "&" + node.getAnchor().get().getValue(), "");
    }
    if (event instanceof CollectionStartEvent start) {
      depth++;
      count(event);
      start.getTag().ifPresent(tag -> refuse("pack.yaml-tag", event, asTyped(tag), ""));
      if (depth > PackLimits.DEPTH) {
        refuse("pack.yaml-deep", event, "", String.valueOf(PackLimits.DEPTH));
      }
    } else if (event instanceof CollectionEndEvent) {
      depth--;
    } else if (event instanceof ScalarEvent scalar) {
      count(event);
      scalar.getTag().ifPresent(tag -> refuse("pack.yaml-tag", event, asTyped(tag), ""));
      if (scalar.getValue().length() > PackLimits.VALUE_CHARS) {
        String most = String.valueOf(PackLimits.VALUE_CHARS);
        refuse("pack.text-long", event, String.valueOf(scalar.getValue().length()), most);
      }
    }
  }

  /** The short way of writing YAML's own tags. */
  private static String asTyped(String tag) {
    return tag.replace("tag:yaml.org,2002:", "!!");
  }

  private void count(Event event) {
    if (++entries == PackLimits.ENTRIES + 1) {
      refuse("pack.yaml-entries", event, "", String.valueOf(PackLimits.ENTRIES));
    }
  }

  private void refuse(String code, Event event, String found, String wanted) {
    if (problems.size() < PackLimits.PROBLEMS) {
      problems.add(Problem.refuse(code, place(event.getStartMark()), found, wanted));
    }
  }

  private Place place(Optional<Mark> mark) {
    return mark.map(at -> new Place.Spot(file, at.getLine() + 1, at.getColumn() + 1, ""))
        .orElseGet(() -> new Place.Spot(file, 0, 0, ""));
  }

  /** The parser's own words on what is wrong, the only ones that know. */
  private static String said(YamlEngineException e) {
    return ReadRuns.firstLine(String.valueOf(e.getMessage()));
  }
}
