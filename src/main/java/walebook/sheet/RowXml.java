package walebook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellReference;

/**
 * The rows of the one long table as the markup of a sheet, some hundred rows at a time (ECMA-376
 * Part 1, 18.3.1.73 row, 18.3.1.4 c, words in line with their cell). POI's own cells, made one by
 * one and dropped again, took as long as all the reading and reckoning.
 *
 * @param <T> what a row is made from
 */
final class RowXml<T> implements Iterator<RowXml.Part> {
  private static final int ROWS_AT_ONCE = 200;

  private final List<Column<T>> columns;
  private final Iterator<T> rows;
  private final Pen pen;
  private final List<String> starts = new ArrayList<>();
  private final Markup out = new Markup();
  private int at = 1;
  private String nth = "";

  /** Some rows. */
  static final class Part {
    private final byte[] markup;
    private final int done;

    Part(byte[] markup, int done) {
      this.markup = markup;
      this.done = done;
    }

    void to(OutputStream out) throws IOException {
      out.write(markup);
    }

    /** How many rows there are with these. */
    int done() {
      return done;
    }
  }

  RowXml(List<Column<T>> columns, Iterator<T> rows, Pen pen) {
    this.columns = List.copyOf(columns);
    this.rows = rows;
    this.pen = pen;
    for (int i = 0; i < columns.size(); i++) {
      starts.add("<c r=\"" + CellReference.convertNumToColString(i));
    }
  }

  @Override
  public boolean hasNext() {
    return rows.hasNext();
  }

  @Override
  public Part next() {
    if (!rows.hasNext()) {
      throw new NoSuchElementException();
    }
    out.clear();
    for (int i = 0; i < ROWS_AT_ONCE && rows.hasNext(); i++) {
      row(rows.next());
      at++;
    }
    return new Part(out.bytes(), at - 1);
  }

  private void row(T from) {
    Value[] values = new Value[columns.size()];
    int lines = 1;
    for (int i = 0; i < values.length; i++) {
      values[i] = columns.get(i).value().apply(from);
      if (columns.get(i).format().isWrapped()) {
        lines = Math.max(lines, TableRows.lines(values[i]));
      }
    }
    nth = at + 1 + "\" s=\"";
    out.plain("<row r=\"").whole(at + 1);
    if (lines > 1) {
      out.plain("\" customHeight=\"1\" ht=\"").whole(Math.round(TableRows.LINE_POINTS * lines));
    }
    out.plain("\">");
    for (int i = 0; i < values.length; i++) {
      cell(i, columns.get(i).format(), values[i]);
    }
    out.plain("</row>");
  }

  private void cell(int column, Format format, Value value) {
    if (value instanceof Value.Text text) {
      words(column, format, text.text());
    } else if (value instanceof Value.Figure figure) {
      number(column, format, figure.number());
    } else if (value instanceof Value.Day day) {
      day(column, format, day.date());
    } else if (value instanceof Value.Moment moment) {
      number(column, format, DateUtil.getExcelDate(moment.time()));
    }
  }

  private void day(int column, Format format, LocalDate date) {
    if (date.getYear() < Pen.FIRST_YEAR) {
      words(column, format, date.toString());
    } else {
      number(column, format, DateUtil.getExcelDate(date));
    }
  }

  private void number(int column, Format format, double number) {
    start(column, pen.styles().of(format).getIndex());
    out.plain("\"><v>").number(number).plain("</v></c>");
  }

  private void words(int column, Format format, String text) {
    String clean = CellText.clean(pen.cover().apply(text));
    boolean quoted = CellText.looksLikeFormula(clean);
    start(column, (quoted ? pen.styles().quoted(format) : pen.styles().of(format)).getIndex());
    boolean edges = clean.indexOf('\n') >= 0 || !clean.strip().equals(clean);
    out.plain("\" t=\"inlineStr\"><is><t");
    out.plain(edges ? " xml:space=\"preserve\">" : ">");
    out.words(CellText.escaped(clean)).plain("</t></is></c>");
  }

  private void start(int column, int style) {
    out.plain(starts.get(column)).plain(nth).whole(style);
  }

  /** Grows as needed and is used again for the next rows. */
  private static final class Markup {
    private byte[] bytes = new byte[1 << 16];
    private int end;

    void clear() {
      end = 0;
    }

    byte[] bytes() {
      return Arrays.copyOf(bytes, end);
    }

    private void room(int more) {
      if (end + more > bytes.length) {
        bytes = Arrays.copyOf(bytes, Math.max(end + more, bytes.length * 2));
      }
    }

    /** Signs of ASCII that need no escape. */
    @SuppressWarnings("deprecation")
    Markup plain(String ascii) {
      room(ascii.length());
      ascii.getBytes(0, ascii.length(), bytes, end);
      end += ascii.length();
      return this;
    }

    Markup whole(long number) {
      if (number < 0 || number > 99) {
        return plain(Long.toString(number));
      }
      room(2);
      if (number > 9) {
        bytes[end++] = (byte) ('0' + number / 10);
      }
      bytes[end++] = (byte) ('0' + number % 10);
      return this;
    }

    Markup number(double number) {
      boolean whole = number == Math.rint(number) && Math.abs(number) < 1e15;
      return whole ? whole((long) number) : plain(Double.toString(number));
    }

    Markup words(String text) {
      room(6 * text.length());
      for (int i = 0; i < text.length(); i++) {
        char sign = text.charAt(i);
        if (sign == '&') {
          plain("&amp;");
        } else if (sign == '<') {
          plain("&lt;");
        } else if (sign == '>') {
          plain("&gt;");
        } else if (sign < 0x80) {
          bytes[end++] = (byte) sign;
        } else {
          i = beyond(text, i);
        }
      }
      return this;
    }

    /** A sign beyond ASCII in UTF-8; tells the last place it took. */
    private int beyond(String text, int at) {
      int sign = text.codePointAt(at);
      if (sign < 0x800) {
        bytes[end++] = (byte) (0xC0 | (sign >> 6));
      } else if (sign < 0x10000) {
        bytes[end++] = (byte) (0xE0 | (sign >> 12));
        bytes[end++] = (byte) (0x80 | ((sign >> 6) & 0x3F));
      } else {
        bytes[end++] = (byte) (0xF0 | (sign >> 18));
        bytes[end++] = (byte) (0x80 | ((sign >> 12) & 0x3F));
        bytes[end++] = (byte) (0x80 | ((sign >> 6) & 0x3F));
      }
      bytes[end++] = (byte) (0x80 | (sign & 0x3F));
      return at + Character.charCount(sign) - 1;
    }
  }
}
