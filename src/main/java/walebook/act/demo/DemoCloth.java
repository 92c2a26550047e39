package walebook.act.demo;

import java.util.List;
import walebook.record.Edge;
import walebook.record.Grain;

/**
 * An invented cloth and the truth about it that the class has to find out.
 *
 * @param kind key in the table of fabric kinds
 * @param courseStretch percent at a firm pull
 * @param growth share of the stretch that stays behind
 */
record DemoCloth(
    String name,
    String kind,
    String fibre,
    double elastane,
    double massGm2,
    double thicknessMm,
    double courseStretch,
    double waleStretch,
    double growth,
    Edge edge) {
  static final DemoCloth JERSEY =
      new DemoCloth(
          "Gull jersey",
          "jersey-elastane",
          "95 % cotton, 5 % elastane",
          5,
          195,
          0.62,
          74,
          43,
          0.06,
          new Edge(false, false, true, true, false));
  static final DemoCloth RIB =
      new DemoCloth(
          "Breakwater rib",
          "rib-1x1",
          "96 % cotton, 4 % elastane",
          4,
          230,
          0.85,
          92,
          22,
          0.05,
          new Edge(false, false, true, false, false));
  static final DemoCloth INTERLOCK =
      new DemoCloth(
          "Slipway interlock",
          "interlock",
          "100 % cotton",
          0,
          210,
          0.80,
          46,
          19,
          0.14,
          new Edge(false, false, false, false, false));
  static final DemoCloth TERRY =
      new DemoCloth(
          "Ropeyard terry",
          "french-terry",
          "80 % cotton, 20 % polyester",
          0,
          280,
          1.10,
          33,
          17,
          0.18,
          new Edge(false, true, false, true, true));
  static final DemoCloth SWIM =
      new DemoCloth(
          "Tidepool swim",
          "swim-tricot",
          "80 % polyamide, 20 % elastane",
          20,
          190,
          0.55,
          108,
          92,
          0.03,
          new Edge(false, false, false, true, false));
  static final List<DemoCloth> ALL = List.of(JERSEY, RIB, INTERLOCK, TERRY, SWIM);

  double stretch(Grain grain) {
    return switch (grain) {
      case COURSE -> courseStretch;
      case WALE -> waleStretch;
      case BIAS -> (courseStretch + waleStretch) / 2;
    };
  }
}
