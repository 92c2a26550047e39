package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TUTOR;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.tools.json.JSONValue;
import org.jspecify.annotations.Nullable;
import walebook.book.jooq.made.DefaultSchema;
import walebook.book.jooq.made.tables.records.StudentRecord;
import walebook.record.Mention;

/**
 * A student's name wherever the book has text. A name counts as a whole word, in any case, composed
 * or decomposed, with any space between its parts, or as a file is called: with hyphens or
 * underlines for all that is no letter.
 */
final class NameInText {
  private static final int AROUND = 40;
  private static final int SHORTEST_PART = 2;
  private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;

  private final DSLContext dsl;
  private final StudentRecord student;
  private final Pattern whole;
  private final Pattern part;

  NameInText(DSLContext dsl, StudentRecord student) {
    this.dsl = dsl;
    this.student = student;
    List<String> parts = List.of(student.getName().strip().split("[\\s\\u00a0]+"));
    List<String> whole = new ArrayList<>(forms(parts));
    whole.addAll(inFileName(student.getName()));
    this.whole = words(whole);
    this.part =
        words(
            parts.stream()
                .filter(each -> each.length() >= SHORTEST_PART)
                .flatMap(each -> forms(List.of(each)).stream())
                .toList());
  }

  private static Pattern words(List<String> forms) {
    String any = forms.isEmpty() ? "(?!)" : String.join("|", forms);
    return Pattern.compile("(?<![\\p{L}\\p{M}])(?:" + any + ")(?![\\p{L}\\p{M}])", FLAGS);
  }

  /** The name as it may be written: composed, decomposed, and both as JSON writes them. */
  private static List<String> forms(List<String> parts) {
    return Stream.of(Normalizer.Form.NFC, Normalizer.Form.NFD)
        .flatMap(
            form ->
                Stream.of(false, true)
                    .map(
                        json ->
                            parts.stream()
                                .map(each -> Normalizer.normalize(each, form))
                                .map(each -> json ? JSONValue.escape(each) : each)
                                .map(Pattern::quote)
                                .collect(Collectors.joining("[\\s\\u00a0]+"))))
        .distinct()
        .toList();
  }

  private static List<String> inFileName(String name) {
    List<String> letters =
        Arrays.stream(name.split("[^\\p{L}\\p{M}\\p{N}]+"))
            .filter(each -> !each.isEmpty())
            .toList();
    return letters.isEmpty()
        ? List.of()
        : Stream.of(Normalizer.Form.NFC, Normalizer.Form.NFD)
            .map(
                form ->
                    letters.stream()
                        .map(each -> Pattern.quote(Normalizer.normalize(each, form)))
                        .collect(Collectors.joining("[\\s_-]+")))
            .distinct()
            .toList();
  }

  private static List<Field<String>> texts(Table<?> table) {
    return Arrays.stream(table.fields())
        .filter(each -> each.getType() == String.class)
        .map(each -> each.coerce(String.class))
        .toList();
  }

  private List<Record> rows(Table<?> table, List<Field<String>> texts) {
    List<Field<?>> columns = new ArrayList<>(texts);
    columns.add(Rows.id(table));
    Field<UUID> maker = table.field("student_id", UUID.class);
    if (maker != null) {
      columns.add(maker);
    }
    if (table.equals(CHANGE_LOG)) {
      columns.add(CHANGE_LOG.ENTITY_ID);
    }
    List<Record> found = new ArrayList<>();
    try (var cursor = dsl.select(columns).from(table).fetchLazy()) {
      for (Record row : cursor) {
        if (texts.stream().anyMatch(each -> finds(part, row.get(each)))) {
          found.add(row);
        }
      }
    }
    return found;
  }

  private static boolean finds(Pattern pattern, @Nullable String text) {
    return text != null && pattern.matcher(text).find();
  }

  /** Puts a stand-in wherever the whole name is. */
  void replace(String standIn) {
    for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
      if (table.equals(STUDENT) || table.equals(TUTOR)) {
        continue;
      }
      List<Field<String>> texts = texts(table);
      for (Record row : rows(table, texts)) {
        texts.forEach(field -> replace(table, row, field, standIn));
      }
    }
  }

  private void replace(Table<?> table, Record row, Field<String> field, String standIn) {
    String text = row.get(field);
    if (text == null || !finds(whole, text) || isOfNamesake(table, row, field)) {
      return;
    }
    String other = field.getName().endsWith("_json") ? JSONValue.escape(standIn) : standIn;
    dsl.update(table)
        .set(field, whole.matcher(text).replaceAll(Matcher.quoteReplacement(other)))
        .where(Rows.id(table).eq(row.get(Rows.id(table))))
        .execute();
  }

  /** Whether the text is known to be of somebody else who is called the same. */
  private boolean isOfNamesake(Table<?> table, Record row, Field<String> field) {
    if (!table.equals(CHANGE_LOG) && !table.equals(ROW_ADDED)) {
      return false;
    }
    boolean ofAnother =
        table.equals(CHANGE_LOG)
            && STUDENT.getName().equals(row.get(CHANGE_LOG.ENTITY))
            && !student.getId().equals(row.get(CHANGE_LOG.ENTITY_ID));
    UUID maker = row.get("student_id", UUID.class);
    boolean byAnother = maker != null && !maker.equals(student.getId());
    return field.getName().equals("who") ? byAnother : ofAnother;
  }

  /** Where the name, or a part of it, stands in what people typed. */
  List<Mention> mentions() {
    List<Mention> all = new ArrayList<>();
    for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
      if (table.equals(STUDENT) || table.equals(TUTOR) || Wholes.isOfHistory(table)) {
        continue;
      }
      List<Field<String>> texts = texts(table);
      for (Record row : rows(table, texts)) {
        for (Field<String> field : texts) {
          String text = Objects.requireNonNullElse(row.get(field), "");
          Matcher found = (finds(whole, text) ? whole : part).matcher(text);
          if (found.find()) {
            all.add(
                new Mention(
                    table.getName(),
                    row.get(Rows.id(table)),
                    field.getName(),
                    around(text, found.start(), found.end()),
                    finds(whole, text)));
          }
        }
      }
    }
    return all;
  }

  private static String around(String text, int start, int end) {
    int from = Math.max(0, start - AROUND);
    int to = Math.min(text.length(), end + AROUND);
    return (from > 0 ? "…" : "")
        + text.substring(from, to).replaceAll("\\s+", " ")
        + (to < text.length() ? "…" : "");
  }
}
