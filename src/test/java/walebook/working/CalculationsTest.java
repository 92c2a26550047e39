package walebook.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;

class CalculationsTest {
  private static final Words WORDS = Words.english();
  private static final List<Calculation> ALL = AllCalculations.all();

  /** Inputs that take each calculation down a different road; the name before the first space. */
  private static final List<String> EXAMPLES =
      List.of(
          "stretch stretched=150",
          "stretch gauge=4in stretched=5in",
          "growth released=104",
          "growth stretched=150 released=99",
          "recovery stretched=150 released=104",
          "recovery stretched=150 released=99",
          "recovery stretched=100 released=100",
          "repeats readings=52;54;51,5",
          "repeats readings=52",
          "enough-stretch stretch=52 uncertainty=1 need=50",
          "enough-stretch stretch=50 uncertainty=1 need=50",
          "enough-stretch stretch=45 uncertainty=1 need=50",
          "balance wale=20 course=60",
          "balance wale=60 course=20",
          "balance wale=0 course=0",
          "mass mass=1.8",
          "mass mass=0.4 side-a=50 side-b=50",
          "mass-units mass=180",
          "mass-units mass=7 in=oz/yd2",
          "wash-change before=500 after=475",
          "wash-change before=200 after=204",
          "wash-change before=500 after=500",
          "cut-length wanted=1000 change=-5",
          "zigzag width=2 length=2.5",
          "zigzag length=2.5",
          "zigzag width=2 length=5 dial=full thickness=0.8",
          "zigzag width=2 length=2.5 thread-stretch=15",
          "zigzag width=5 length=1.5 steps=3 thickness=0.8 thread-stretch=15",
          "zigzag-width target=50 length=2.5",
          "stitch-density length=2.5",
          "seam-stretch reached=160",
          "seam-stretch reached=160 end=held",
          "seam-share seam-stretch=48 cloth-stretch=60",
          "seam-share seam-stretch=48 cloth-stretch=60 end=held",
          "seam-share seam-stretch=48 cloth-stretch=0",
          "seam-check seam-stretch=65 cloth-stretch=60",
          "seam-check seam-stretch=60 cloth-stretch=60",
          "seam-check seam-stretch=40 cloth-stretch=60",
          "seam-check seam-stretch=40 cloth-stretch=60 end=held",
          "seam-check seam-stretch=60 cloth-stretch=60 end=held",
          "seam-check seam-stretch=65 need=60",
          "seam-check seam-stretch=60 need=60",
          "seam-check seam-stretch=40 need=60",
          "seam-check seam-stretch=40 need=60 end=held",
          "seam-check seam-stretch=65 need=60 end=held",
          "seam-check seam-stretch=65",
          "seam-check seam-stretch=65 end=held",
          "edge-change sewn=104",
          "edge-change sewn=112 pressed=97",
          "seam-fit geometry=0;10;20;30;40;50 measured=20;30;41;50;59;70 held=2",
          "seam-fit geometry=0;10;20;30;40;50 measured=20;30;41;50;59;70 at=25",
          "seam-fit geometry=0;10 measured=20;30",
          "thread-use",
          "thread-use stitch=304 width=3",
          "thread-use stitch=607",
          "thread-unravelled needle-thread=130 under-thread=120",
          "needle mass=160",
          "needle mass=190 elastane=18 structure=pile",
          "needle-size nm=80",
          "needle-size nm=120",
          "needle-from-older older=12",
          "ease body=900 finished=800",
          "ease body=36in finished=38in",
          "ease body=900 finished=600",
          "stretch-used body=900 finished=800 stretch=50",
          "stretch-used body=900 finished=800 stretch=18",
          "stretch-used body=900 finished=800 stretch=20.8 stretch-u=1",
          "stretch-used body=900 finished=800 stretch=0 wear=sport",
          "stretch-used body=900 finished=950 stretch=50",
          "pattern-gauge gauge-to=150",
          "pattern-gauge gauge-to=150 stretch=52",
          "pattern-gauge gauge-to=150 stretch=50",
          "pattern-gauge gauge-from=4in gauge-to=6in stretch=40",
          "which-way body=900 finished=800 course=60 wale=15",
          "which-way body=900 finished=800 course=15 wale=60 requirement=30",
          "which-way body=900 finished=800 course=60 wale=60",
          "which-way body=900 finished=800 course=15 wale=0",
          "which-way body=900 finished=800 course=15",
          "which-way body=900 finished=800 course=20.8 course-u=1 wale=10",
          "opening opening=500 over=601",
          "opening opening=620 over=601 cloth=50",
          "opening opening=500 over=601 cloth=60",
          "opening opening=500 over=601 cloth=30 margin=10",
          "opening opening=500 over=601 cloth=30 margin=25",
          "opening opening=500 over=601 cloth=60 seam=40 seam-by=held hem=35 hem-by=model",
          "opening opening=500 over=601 cloth=60 seam=20",
          "opening opening=500 over=601 cloth=60 hem-by=unknown",
          "opening opening=500 over=601 cloth=60 interfacing=5 garment=child",
          "opening opening=500 over=601 cloth=60 band=30 band-by=gave",
          "opening opening=500 over=601 cloth=60 elastic=30 garment=sport",
          "allowance allowance=15 sewn=6",
          "allowance allowance=10 sewn=12.7 seams=1 finished=900 body=920",
          "allowance allowance=10 sewn=10",
          "curved-edge allowance=15 sewn=6",
          "curved-edge allowance=6 sewn=10",
          "curved-edge allowance=6 sewn=6",
          "neckline-change allowance=15 sewn=6 opening=560 band-length=448",
          "neckline-change allowance=6 sewn=10 opening=560 shape=scoop",
          "neckline-change allowance=6 sewn=6 opening=560 turn=4.5",
          "overlocker allowance=15 knife=6.5",
          "overlocker allowance=6 knife=7",
          "overlocker allowance=6 knife=6",
          "band opening=560 ratio=0.8 band-width=20",
          "band opening=560 ratio=0.8 band-width=20 stretch=60",
          "band opening=560 ratio=0.7 band-width=20 stretch=40 place=cuff",
          "band opening=560 ratio=0.7 band-width=20 stretch=71.4 stretch-u=1",
          "band opening=560 ratio=1 band-width=20 stretch=0",
          "band-flat opening=560 ratio=0.8 band-width=20",
          "band-flat opening=560 ratio=0.9 band-width=20 slope=20",
          "band-flat opening=560 ratio=0.6 band-width=20 shape=flat-circle",
          "band-over band-length=434 over=597",
          "band-over band-length=434 over=597 stretch=50",
          "band-over band-length=434 over=597 stretch=30",
          "band-over band-length=434 over=597 stretch=37.5",
          "band-over band-length=600 over=597",
          "quarter-marks opening=560 band-length=448",
          "quarter-marks opening=560 band-length=448 shoulder=95",
          "quarter-marks opening=560 band-length=448 shoulder=150 parts=8",
          "segment-marks opening=560 band-length=448 segments=90;190;280",
          "segment-marks opening=600 band-length=540 segments=400;200 weights=1;3",
          "locked-span line=400 motifs=60;60 gaps=20 stretch=50",
          "locked-span line=400 motifs=60;60 gaps=20 sewn-as=single stretch=50",
          "locked-span line=400 motifs=60;60 gaps=20 stretch=50 need=25",
          "locked-span line=400 motifs=60;60 gaps=20 stretch=50 need=40",
          "locked-span line=400 motifs=200 stretch=50 need=25",
          "negative-ease body=900 strain=12.5",
          "negative-ease body=900 strain=60",
          "length-lost sideways=94 wanted=800",
          "wash-first finished=900 round-change=-5 wanted=600 along-change=-8");

  static Stream<String> examples() {
    return EXAMPLES.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void showsWholeSentencesAndWholeSteps(String example) {
    Answer<Working> answer = run(example);
    assertThat(answer.problems()).as(example).isEmpty();
    Working working = answer.value();
    assertThat(working.name()).isEqualTo(example.split(" ")[0]);
    whole(working.title());
    whole(working.says());
    working.assumptions().forEach(CalculationsTest::whole);
    working.cautions().forEach(caution -> whole(caution.says()));
    assertThat(working.sources()).isNotEmpty();
    for (Step step : working.steps()) {
      whole(step.says());
      assertThat(step.formula()).isNotBlank();
      assertThat(step.numbers()).isNotBlank().doesNotContain("NaN", "Infinity", "null", "%s");
    }
    if (working.result() != null) {
      assertThat(working.steps()).isNotEmpty();
    }
  }

  @Test
  void everyCalculationHasAnExampleAndANameOfItsOwn() {
    assertThat(ALL).extracting(Calculation::name).doesNotHaveDuplicates();
    assertThat(EXAMPLES.stream().map(example -> example.split(" ")[0]).distinct())
        .containsExactlyInAnyOrderElementsOf(ALL.stream().map(Calculation::name).toList());
  }

  @Test
  void everyInputIsSaidInWords() {
    for (Calculation calculation : ALL) {
      whole(calculation.says());
      for (Input input : calculation.inputs()) {
        whole(input.says());
        assertThat(WORDS.has("problem.field." + input.name())).as(input.name()).isTrue();
      }
    }
  }

  @Test
  void boardIsTheSameInEveryLanguageOfTheMachine() {
    Locale before = Locale.getDefault();
    List<Working> english = EXAMPLES.stream().map(example -> run(example).value()).toList();
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(EXAMPLES.stream().map(example -> run(example).value()).toList())
            .isEqualTo(english);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void wrongInputsAreToldAllAtOnce() {
    Answer<Working> answer = run("seam-stretch gauge=ten end=perhaps colour=blue");
    assertThat(answer.problems())
        .extracting(Problem::code)
        .containsExactlyInAnyOrder(
            "input.unknown", "number.not-a-number", "input.missing", "input.choice");
  }

  @Test
  void usualLengthsAreInMillimetresWhateverTheUsersUnit() {
    Calculation stretch = named("stretch");
    // 100 mm by default against 5.90551 in, 150 mm: 50 %.
    Working working = stretch.runTyped(Map.of("stretched", "5.90551"), Unit.INCH).value();
    assertThat(Math.round(working.value())).isEqualTo(50);
  }

  @Test
  void readingsThatAreNoNumbersAreRefused() {
    assertThat(run("repeats readings=52;;x").problems())
        .extracting(Problem::code)
        .containsExactly("number.empty", "number.not-a-number");
    assertThat(run("seam-fit geometry=1;2 measured=3").problems())
        .extracting(Problem::code)
        .containsExactly("fit.uneven");
  }

  private static Answer<Working> run(String example) {
    String[] parts = example.split(" ");
    Map<String, String> typed = new HashMap<>();
    for (int i = 1; i < parts.length; i++) {
      String[] pair = parts[i].split("=");
      typed.put(pair[0], pair[1]);
    }
    return named(parts[0]).runTyped(typed, Unit.MM);
  }

  private static Calculation named(String name) {
    return ALL.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static void whole(Message message) {
    String said = WORDS.say(message);
    assertThat(said).as(message.key()).isNotBlank().doesNotContain("{", "}", "[" + message.key());
  }
}
