package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.DRAFT;
import static walebook.book.jooq.made.Tables.DRAFT_FIELD;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import walebook.book.Drafts;
import walebook.book.Ids;
import walebook.book.jooq.made.tables.records.DraftFieldRecord;
import walebook.book.jooq.made.tables.records.DraftRecord;
import walebook.record.Draft;
import walebook.record.Stamp;

/** Drafts, field by field. */
record JooqDrafts(Access access, Clock clock) implements Drafts {

  @Override
  public void keep(Draft draft) {
    access.write(
        dsl -> {
          remove(dsl, draft.form(), draft.owner());
          Stamp fresh = Stamp.fresh(clock.instant());
          DraftRecord row = Rows.stamped(new DraftRecord(), Ids.next(), fresh);
          row.setForm(draft.form());
          row.setOwner(draft.owner());
          access.insert(row);
          draft
              .typed()
              .forEach(
                  (name, text) -> {
                    DraftFieldRecord field =
                        Rows.stamped(new DraftFieldRecord(), Ids.next(), fresh);
                    field.setDraftId(row.getId());
                    field.setField(name);
                    field.setTyped(text);
                    access.insert(field);
                  });
          return draft;
        });
  }

  @Override
  public @Nullable Draft find(String form, String owner) {
    List<Draft> found = list(DRAFT.FORM.eq(form).and(DRAFT.OWNER.eq(owner)));
    return found.isEmpty() ? null : found.get(0);
  }

  @Override
  public List<Draft> of(String form) {
    return list(DRAFT.FORM.eq(form));
  }

  private List<Draft> list(Condition which) {
    return access.read(
        dsl ->
            dsl.selectFrom(DRAFT)
                .where(which)
                .orderBy(DRAFT.CHANGED_AT.desc(), DRAFT.ID)
                .fetch()
                .map(row -> new Draft(row.getForm(), row.getOwner(), fields(dsl, row))));
  }

  private static Map<String, String> fields(DSLContext dsl, DraftRecord row) {
    return dsl.selectFrom(DRAFT_FIELD)
        .where(DRAFT_FIELD.DRAFT_ID.eq(row.getId()))
        .fetchMap(DRAFT_FIELD.FIELD, DRAFT_FIELD.TYPED);
  }

  @Override
  public void drop(String form, String owner) {
    access.write(dsl -> remove(dsl, form, owner));
  }

  private static int remove(DSLContext dsl, String form, String owner) {
    return dsl.deleteFrom(DRAFT).where(DRAFT.FORM.eq(form)).and(DRAFT.OWNER.eq(owner)).execute();
  }
}
