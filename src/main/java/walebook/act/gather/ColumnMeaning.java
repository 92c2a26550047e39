package walebook.act.gather;

/** What a column of the book holds, which tells how its values are said. */
enum ColumnMeaning {
  /** Words, a name or a day: they stand as they are. */
  AS_IS(""),
  /** A long text, of which its size is told. */
  LONG_TEXT(""),
  /** Something nobody reads, which another column beside it tells in words. */
  UNSAID(""),
  /** A reference, given as what people call the thing. */
  THING(""),
  MACHINE("act.gather.value.machine"),
  YES_NO(""),
  CHOICE(""),
  CHANGED(""),
  MARKS(""),
  HELP(""),
  CHECKED_BY(""),
  MARKED_VALUE(""),
  VALUE_MARK(""),
  STITCH(""),
  FAULT(""),
  CLOTH_KIND(""),
  GARMENT_KIND(""),
  GIRTH(""),
  GARMENT_EDGE(""),
  LINK(""),
  SHAPE(""),
  WEAR(""),
  PICTURE_KIND(""),
  GRADE(""),
  SEVERITY(""),
  MARK("act.gather.value.mark"),
  MM("act.gather.value.mm"),
  PERCENT("act.gather.value.percent"),
  GRAMS("act.gather.value.grams"),
  GRAMS_PER_M2("act.gather.value.grams-per-m2"),
  SECONDS("act.gather.value.seconds"),
  MINUTES("act.gather.value.minutes"),
  PIXELS("act.gather.value.pixels"),
  DIAL("act.gather.value.dial"),
  RATIO("act.gather.value.ratio"),
  SIZE("act.gather.value.size"),
  NTH("act.gather.value.nth"),
  LAYERS("act.gather.value.layers"),
  SEAMS("act.gather.value.seams"),
  TIMES("act.gather.value.times"),
  PRICE("act.gather.value.price");

  private final String withUnit;

  ColumnMeaning(String withUnit) {
    this.withUnit = withUnit;
  }

  /** The key of the words that a number of this meaning stands in; empty when it is no number. */
  String withUnit() {
    return withUnit;
  }
}
