package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import walebook.act.piece.Asked;
import walebook.act.piece.PieceField;
import walebook.book.Book;
import walebook.paper.CardField;
import walebook.paper.PaperSize;
import walebook.paper.RecordCard;
import walebook.problem.Answer;
import walebook.record.PieceAsked;
import walebook.record.PlannedPiece;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints record cards for the planned pieces of a class that are not logged yet. */
public final class PrintCards {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintCards(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  public Answer<Printed> print(PrintScope scope, PaperSize size, PrintFile file) {
    List<RecordCard> cards = book.inOneStep(() -> cards(scope));
    return file.write(words, pages -> pages.cards(size, cards));
  }

  private List<RecordCard> cards(PrintScope scope) {
    GatherPieces gather = new GatherPieces(book, scope, words, tables);
    List<RecordCard> cards = new ArrayList<>();
    for (PieceLine line : gather.all()) {
      PlannedPiece planned = line.planned();
      if (planned != null && line.logged() == null) {
        String lesson = line.lesson() == null ? "" : line.lesson().title();
        cards.add(
            new RecordCard(
                gather.wording().slip(line, gather.called().of(line.studentId())),
                lesson,
                fields(planned, line, gather)));
      }
    }
    return cards;
  }

  /** The form's fields that the piece makes sense of, in the form's order. */
  private List<CardField> fields(PlannedPiece planned, PieceLine line, GatherPieces gather) {
    PieceAsked asked = planned.asked();
    Set<PieceField> sensible =
        Asked.of(
            asked.method(),
            asked.machineKind(),
            gather.wording().type(asked.stitchType()),
            SeamEnd.GAVE,
            Pull.LOAD,
            asked.readings(),
            false);
    CardWording wording =
        new CardWording(words, planned, gather.wording().cloth(line), gather.wording());
    List<CardField> fields = new ArrayList<>();
    for (PieceField field : PieceField.values()) {
      if (sensible.contains(field)) {
        fields.add(wording.field(field, fields.isEmpty()));
      }
    }
    return fields;
  }
}
