package walebook.lesson;

import java.util.List;

/** A piece of a lesson's text, free of any way of showing it. */
public sealed interface Block {
  /** A heading below the step's own; level 3 to 6, or 1. */
  record Heading(int level, List<Run> runs) implements Block {
    public Heading {
      runs = List.copyOf(runs);
    }
  }

  record Paragraph(List<Run> runs) implements Block {
    public Paragraph {
      runs = List.copyOf(runs);
    }
  }

  /** A list; {@code start} is the first number, 0 for bullets. */
  record Items(int start, List<List<Block>> items) implements Block {
    public Items {
      items = items.stream().map(List::copyOf).toList();
    }

    public boolean numbered() {
      return start > 0;
    }
  }

  /**
   * A picture.
   *
   * @param file as the text names it
   * @param alt what it shows, in words
   * @param line where it stands in lesson.md, from 1
   */
  record Picture(String file, String alt, int line) implements Block {
    /** The file a window shows, which can't draw SVG: the PNG beside it. */
    public String shownFile() {
      return file.endsWith(".svg") ? file.substring(0, file.length() - 4) + ".png" : file;
    }
  }

  /** A table: the header's cells, then each row's. */
  record Table(List<List<Run>> header, List<List<List<Run>>> rows) implements Block {
    public Table {
      header = header.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }
  }

  record Quote(List<Block> blocks) implements Block {
    public Quote {
      blocks = List.copyOf(blocks);
    }
  }

  /** Text set as typed, its lines kept. */
  record Typed(String text) implements Block {}

  /** A line across. */
  record Divider() implements Block {}
}
