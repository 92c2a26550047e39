package walebook.garment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.cloth.Decision;
import walebook.problem.Answer;
import walebook.quantity.Show;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** A garment worked with each grain going round the body: which way passes, which lies better. */
public final class WhichWay {
  private WhichWay() {}

  /**
   * What has to be passed.
   *
   * @param bodyMm girth of the body, over 0
   * @param finishedMm girth of the finished garment, over 0
   * @param need the pattern's gauge; null when it has none
   * @param limit the largest share of the stretch that may be used, per cent
   */
  record Asked(double bodyMm, double finishedMm, @Nullable GaugeNeed need, double limit) {}

  /**
   * Works both ways.
   *
   * @param bodyMm girth of the body, over 0
   * @param finishedMm girth of the finished garment, over 0
   * @param need the pattern's gauge; null when it has none
   * @param cloth its stretch both ways
   * @param wear how long it is worn
   * @param bands the reference table of comfort bands
   * @return the working; its verdict is met when at least one way passes
   */
  public static Answer<Working> of(
      double bodyMm,
      double finishedMm,
      @Nullable GaugeNeed need,
      ClothStretch cloth,
      Wear wear,
      List<ComfortBand> bands) {
    return of(bodyMm, finishedMm, need, cloth, null, wear, bands);
  }

  /**
   * Works both ways for pieces that lie one way already.
   *
   * @param laid which direction goes round as laid; null while nothing is laid
   * @return the working; when only the other way passes, its verdict is of the way as laid
   */
  static Answer<Working> of(
      double bodyMm,
      double finishedMm,
      @Nullable GaugeNeed need,
      ClothStretch cloth,
      @Nullable GrainRound laid,
      Wear wear,
      List<ComfortBand> bands) {
    Asked asked = new Asked(bodyMm, finishedMm, need, ComfortBand.limit(bands, wear));
    return new GarmentNeeds()
        .girth("body", bodyMm)
        .girth("finished", finishedMm)
        .then(() -> work(asked, cloth, laid));
  }

  /** One way's verdict: the gauge and the share used, whichever is worse. */
  static Verdict passes(Asked asked, @Nullable GrainStretch stretch) {
    if (stretch == null) {
      return Verdict.NOT_KNOWN;
    }
    Verdict gauge =
        asked.need() == null
            ? Verdict.MET
            : Decision.verdict(stretch.percent(), stretch.expanded(), asked.need().percent());
    Verdict used = used(asked, stretch);
    if (gauge == Verdict.NOT_MET || used == Verdict.NOT_MET) {
      return Verdict.NOT_MET;
    }
    return gauge == Verdict.MET ? used : gauge;
  }

  private static Verdict used(Asked asked, GrainStretch stretch) {
    double strain = Ease.wornStrain(asked.bodyMm(), asked.finishedMm());
    if (strain == 0) {
      return Verdict.MET;
    }
    if (stretch.percent() == 0) {
      return Verdict.NOT_MET;
    }
    return StretchUsed.verdict(
        StretchUsed.share(strain, stretch.percent()),
        2 * StretchUsed.uncertainty(strain, stretch),
        asked.limit());
  }

  private static Working work(Asked asked, ClothStretch cloth, @Nullable GrainRound laid) {
    WorkingBuilder board =
        Working.named("which-way", Message.of("garment.way.title"))
            .assume(Message.of("garment.assume.comfortable-pull"))
            .assume(Message.of("garment.assume.pieces-turn-too"))
            .assume(Message.of("garment.assume.way-covers"))
            .source(Source.Kind.DEFINITION, "both directions worked alike")
            .source(Source.Kind.COMMON_PRACTICE, "the greater stretch usually goes round the body");
    Ease.strainStep(board, asked.bodyMm(), asked.finishedMm());
    Ease.caution(board, Ease.percent(asked.bodyMm(), asked.finishedMm()));
    step(board, asked, cloth.course(), Message.of("garment.way.step-course"));
    step(board, asked, cloth.wale(), Message.of("garment.way.step-wale"));
    Verdict course = passes(asked, cloth.course());
    Verdict wale = passes(asked, cloth.wale());
    Verdict best = better(course, wale);
    Verdict now = laid == null ? best : laid == GrainRound.COURSE ? course : wale;
    if (best != Verdict.MET || now == Verdict.MET) {
      return board.verdict(best).says(sentence(cloth, course, wale));
    }
    board.verdict(now);
    if (now != Verdict.NOT_MET) {
      return board.says(sentence(cloth, course, wale));
    }
    String key =
        course == Verdict.MET ? "garment.way.says-turn-course" : "garment.way.says-turn-wale";
    return board.says(Message.of(key, show(cloth.course()), show(cloth.wale())));
  }

  private static void step(
      WorkingBuilder board, Asked asked, @Nullable GrainStretch stretch, Message says) {
    if (stretch == null) {
      board.step(says, "share = 100 × ε ÷ S", "S = ?");
      return;
    }
    double strain = Ease.wornStrain(asked.bodyMm(), asked.finishedMm());
    String share =
        stretch.percent() == 0
            ? "S = " + Show.percent(0)
            : "100 × %s ÷ %s = %s"
                .formatted(
                    n(strain),
                    n(stretch.percent()),
                    Show.percent(StretchUsed.share(strain, stretch.percent())));
    String gauge = asked.need() == null ? "" : "; S_req = " + Show.percent(asked.need().percent());
    board.step(
        says,
        "share = 100 × ε ÷ S ≤ limit" + (asked.need() == null ? "" : ", S ≥ S_req"),
        share + "; limit " + Show.percent(asked.limit()) + gauge);
  }

  private static Verdict better(Verdict course, Verdict wale) {
    for (Verdict verdict : List.of(Verdict.MET, Verdict.TOO_CLOSE, Verdict.NOT_KNOWN)) {
      if (course == verdict || wale == verdict) {
        return verdict;
      }
    }
    return Verdict.NOT_MET;
  }

  private static Message sentence(ClothStretch cloth, Verdict course, Verdict wale) {
    String across = show(cloth.course());
    String along = show(cloth.wale());
    if (course == Verdict.MET && wale == Verdict.MET) {
      return Message.of("garment.way.says-both", across, along);
    }
    if (course == Verdict.MET) {
      return Message.of("garment.way.says-course", across, along);
    }
    if (wale == Verdict.MET) {
      return Message.of("garment.way.says-wale", across, along);
    }
    if (course == Verdict.NOT_KNOWN || wale == Verdict.NOT_KNOWN) {
      return Message.of("garment.way.says-unknown", across, along);
    }
    return course == Verdict.NOT_MET && wale == Verdict.NOT_MET
        ? Message.of("garment.way.says-neither", across, along)
        : Message.of("garment.way.says-close", across, along);
  }

  private static String show(@Nullable GrainStretch stretch) {
    return stretch == null ? "?" : Show.percent(stretch.percent());
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
