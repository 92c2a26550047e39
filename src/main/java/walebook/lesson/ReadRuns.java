package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns the inside of a paragraph into runs; links are shown as their words. */
final class ReadRuns {
  private final Refuse refuse;

  ReadRuns(Refuse refuse) {
    this.refuse = refuse;
  }

  /** Takes note of something that can't stand in a lesson. */
  interface Refuse {
    void at(String code, Node node, String found, String wanted);
  }

  List<Run> of(Node parent) {
    List<Run> runs = new ArrayList<>();
    for (Node each = parent.getFirstChild(); each != null; each = each.getNext()) {
      add(each, runs, Run.Style.PLAIN, 0);
    }
    return joined(runs);
  }

  /** Neighbours of one style made one. */
  static List<Run> joined(List<Run> runs) {
    List<Run> all = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < runs.size(); i++) {
      text.append(runs.get(i).text());
      if (i + 1 == runs.size() || runs.get(i + 1).style() != runs.get(i).style()) {
        all.add(new Run(text.toString(), runs.get(i).style()));
        text.setLength(0);
      }
    }
    return all;
  }

  void add(Node node, List<Run> runs, Run.Style style, int depth) {
    if (node instanceof Text text) {
      runs.add(new Run(text.getLiteral(), style));
    } else if (node instanceof Code code) {
      runs.add(new Run(code.getLiteral(), Run.Style.TYPED));
    } else if (node instanceof SoftLineBreak) {
      runs.add(new Run(" ", style));
    } else if (node instanceof HardLineBreak) {
      runs.add(new Run("\n", style));
    } else if (node instanceof HtmlInline html) {
      refuse.at("pack.html", html, firstLine(html.getLiteral()), "");
    } else if (node instanceof Image) {
      refuse.at("pack.picture-inside", node, "", "");
    } else if (depth > PackLimits.TEXT_DEPTH) {
      refuse.at("pack.text-deep", node, "", String.valueOf(PackLimits.TEXT_DEPTH));
    } else {
      Run.Style inner = style(node, style);
      for (Node each = node.getFirstChild(); each != null; each = each.getNext()) {
        add(each, runs, inner, depth + 1);
      }
    }
  }

  private static Run.Style style(Node node, Run.Style outer) {
    if (node instanceof StrongEmphasis) {
      return Run.Style.STRONG;
    }
    return node instanceof Emphasis && outer != Run.Style.STRONG ? Run.Style.EMPHASIS : outer;
  }

  static String firstLine(String text) {
    String line = text.strip().lines().findFirst().orElse("");
    return line.length() > 60 ? line.substring(0, 60) + "…" : line;
  }
}
