package walebook.desk.common;

import java.util.UUID;
import java.util.function.Consumer;
import walebook.act.history.SayChange;
import walebook.act.history.StepBack;
import walebook.act.history.UseBin;
import walebook.problem.Answer;
import walebook.words.Words;

/** Puts a thing in the bin from wherever it is shown, with the way back in the notice. */
public final class ToBin {
  private final Session session;
  private final Words words;

  public ToBin(Session session) {
    this.session = session;
    this.words = session.words();
  }

  private record Put(Answer<UUID> step, String what) {}

  /**
   * Puts it there.
   *
   * @param say told what came of it
   * @param gone run when it is in the bin, before the places read anew
   */
  public void put(String entity, UUID id, Consumer<Notice> say, Runnable gone) {
    session.run(
        progress -> work(entity, id),
        put -> {
          if (!put.step().isGood()) {
            say.accept(new Notice(words.say(put.step().problems().get(0)), null));
            return;
          }
          gone.run();
          session.changed();
          UUID step = put.step().value();
          String sentence = words.say("desk.common.bin.put", put.what());
          say.accept(new Notice(sentence, () -> undo(step, put.what(), say)));
        });
  }

  private Put work(String entity, UUID id) {
    SayChange words = say();
    String json = session.book().history().now(entity, id);
    String what = words.thing(entity, id, json == null ? "" : json);
    return new Put(new UseBin(session.book(), words).put(entity, id, session.by()), what);
  }

  private SayChange say() {
    return new SayChange(session.book(), words, session.namesHiddenProperty().get());
  }

  private void undo(UUID step, String what, Consumer<Notice> say) {
    session.run(
        progress ->
            new StepBack(session.book(), say()).undo(new StepBack.Offer(step, what), session.by()),
        answer -> {
          String sentence =
              answer.isGood()
                  ? words.say("desk.common.bin.back", what)
                  : words.say(answer.problems().get(0));
          session.changed();
          say.accept(new Notice(sentence, null));
        });
  }
}
