package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.ThematicBreak;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Turns parsed blocks into ours; raw HTML and too deep nesting are refused where they stand. */
final class ReadBlocks {
  private final List<Problem> problems;
  private final String file;
  private final ReadRuns runs;

  ReadBlocks(String file, List<Problem> problems) {
    this.file = file;
    this.problems = problems;
    this.runs = new ReadRuns(this::refuse);
  }

  String words(Node node) {
    return Run.plain(runs.of(node)).strip();
  }

  List<Block> block(Node node, int depth) {
    if (depth > PackLimits.TEXT_DEPTH) {
      refuse("pack.text-deep", node, "", String.valueOf(PackLimits.TEXT_DEPTH));
      return List.of();
    }
    if (node instanceof Paragraph) {
      return paragraph(node);
    } else if (node instanceof Heading head) {
      return List.of(new Block.Heading(head.getLevel(), runs.of(head)));
    } else if (node instanceof ListBlock list) {
      return List.of(items(list, depth));
    } else if (node instanceof BlockQuote) {
      return List.of(new Block.Quote(children(node, depth)));
    } else if (node instanceof TableBlock) {
      return List.of(table(node));
    } else if (node instanceof FencedCodeBlock code) {
      return List.of(new Block.Typed(code.getLiteral().stripTrailing()));
    } else if (node instanceof IndentedCodeBlock code) {
      return List.of(new Block.Typed(code.getLiteral().stripTrailing()));
    } else if (node instanceof ThematicBreak) {
      return List.of(new Block.Divider());
    } else if (node instanceof HtmlBlock html) {
      refuse("pack.html", html, ReadRuns.firstLine(html.getLiteral()), "");
    } else if (!(node instanceof LinkReferenceDefinition)) {
      refuse("pack.html", node, node.getClass().getSimpleName(), "");
    }
    return List.of();
  }

  private List<Block> children(Node parent, int depth) {
    List<Block> all = new ArrayList<>();
    for (Node each = parent.getFirstChild(); each != null; each = each.getNext()) {
      all.addAll(block(each, depth + 1));
    }
    return all;
  }

  /** A paragraph, cut where pictures stand in it. */
  private List<Block> paragraph(Node node) {
    List<Block> all = new ArrayList<>();
    List<Run> text = new ArrayList<>();
    for (Node each = node.getFirstChild(); each != null; each = each.getNext()) {
      if (each instanceof Image image) {
        flush(all, text);
        String alt = Run.plain(runs.of(image)).strip();
        all.add(new Block.Picture(image.getDestination(), alt, line(image)));
      } else {
        runs.add(each, text, Run.Style.PLAIN, 0);
      }
    }
    flush(all, text);
    return all;
  }

  private static void flush(List<Block> all, List<Run> text) {
    if (!Run.plain(text).isBlank()) {
      all.add(new Block.Paragraph(ReadRuns.joined(text)));
    }
    text.clear();
  }

  private Block items(ListBlock list, int depth) {
    List<List<Block>> items = new ArrayList<>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      items.add(children(item, depth));
    }
    int start = 0;
    if (list instanceof OrderedList ordered) {
      Integer first = ordered.getMarkerStartNumber();
      start = first == null ? 1 : Math.max(1, first);
    } else if (!(list instanceof BulletList)) {
      throw new IllegalStateException("a list is numbered or not");
    }
    return new Block.Items(start, items);
  }

  private Block table(Node table) {
    List<List<Run>> header = new ArrayList<>();
    List<List<List<Run>>> rows = new ArrayList<>();
    for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
      for (Node row = part.getFirstChild(); row instanceof TableRow; row = row.getNext()) {
        List<List<Run>> cells = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
          cells.add(runs.of(cell));
        }
        if (part instanceof TableHead) {
          header.addAll(cells);
        } else {
          rows.add(cells);
        }
      }
    }
    return new Block.Table(header, rows);
  }

  private void refuse(String code, Node node, String found, String wanted) {
    List<SourceSpan> spans = node.getSourceSpans();
    int column = spans.isEmpty() ? 1 : spans.get(0).getColumnIndex() + 1;
    Place place = new Place.Spot(file, line(node), column, "");
    problems.add(Problem.refuse(code, place, found, wanted));
  }

  /** The line a node starts in, from 1; that of the nearest parent known. */
  static int line(Node node) {
    for (Node each = node; each != null; each = each.getParent()) {
      if (!each.getSourceSpans().isEmpty()) {
        return each.getSourceSpans().get(0).getLineIndex() + 1;
      }
    }
    return 0;
  }
}
