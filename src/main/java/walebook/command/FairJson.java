package walebook.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.CompareFair;
import walebook.compare.Dot;
import walebook.compare.FactorTables;
import walebook.compare.FairComparison;
import walebook.compare.FairPair;
import walebook.compare.FairRow;
import walebook.compare.Lasting;
import walebook.statistics.AdjustedMean;
import walebook.statistics.Interval;

/** A fair comparison for programs; what is not known is null. */
final class FairJson {
  private final boolean pValues;

  FairJson(boolean pValues) {
    this.pValues = pValues;
  }

  ObjectNode of(CompareFair.Found found, @Nullable FactorTables tables, List<String> says) {
    ObjectNode json = comparison(found.comparison());
    ArrayNode sentences = json.putArray("says");
    says.forEach(sentences::add);
    dots(json.putArray("best"), found.standouts().best(), found.standouts().photos());
    dots(json.putArray("worst"), found.standouts().worst(), found.standouts().photos());
    dots(json.putArray("oddUnseen"), found.standouts().unseen(), found.standouts().photos());
    if (tables != null) {
      ArrayNode single = json.putArray("factorByFactor");
      tables.single().forEach(one -> single.add(comparison(one)));
      ArrayNode grids = json.putArray("pairsOfFactors");
      tables.pairs().forEach(grid -> grid(grids.addObject(), grid));
    }
    return json;
  }

  ObjectNode comparison(FairComparison comparison) {
    ObjectNode json = Json.object();
    json.put("outcome", comparison.question().outcome().key());
    json.put("matters", comparison.question().matters());
    json.put("confidence", comparison.question().confidence());
    json.put("pieces", comparison.pieces());
    json.put("students", comparison.students());
    json.put("setAside", comparison.setAside());
    json.put("logged", comparison.logged());
    json.put("withoutValue", comparison.without());
    json.put("withoutClothStretch", comparison.noStretch());
    json.put("residualSd", comparison.residualSd());
    json.put("measuringSd", comparison.measuring() == null ? null : comparison.measuring().sd());
    ArrayNode factors = json.putArray("factors");
    comparison.factors().forEach(each -> factors.add(each.key()));
    ObjectNode same = json.putObject("same");
    comparison.same().forEach(each -> same.put(each.factor().key(), each.level()));
    ArrayNode rows = json.putArray("rows");
    comparison.rows().forEach(row -> row(rows.addObject(), row, comparison));
    json.put("cloths", comparison.cloths());
    ArrayNode within = json.putArray("comparedWithin");
    comparison.within().forEach(each -> within.add(each.key()));
    ArrayNode pairs = json.putArray("pairs");
    comparison.pairs().forEach(pair -> pair(pairs.addObject(), pair));
    ArrayNode groups = json.putArray("groups");
    for (FairComparison.Group each : comparison.groups()) {
      ObjectNode group = groups.addObject();
      group.put("cloth", each.cloth().isEmpty() ? null : each.cloth());
      ArrayNode settings = group.putArray("settings");
      each.settings().forEach(levels -> levels(settings.addArray(), levels));
      levels(group.putArray("students"), each.students());
    }
    return json;
  }

  private static void row(ObjectNode node, FairRow row, FairComparison comparison) {
    ObjectNode levels = node.putObject("levels");
    for (int i = 0; i < row.levels().size(); i++) {
      levels.put(comparison.factors().get(i).key(), row.levels().get(i));
    }
    node.put("pieces", row.pieces());
    node.put("students", row.students());
    node.put("rawMean", row.raw() == null ? null : row.raw().mean());
    AdjustedMean adjusted = row.adjusted();
    node.put("adjustedMean", adjusted == null ? null : adjusted.mean());
    limits(node, "adjusted", adjusted == null ? null : adjusted.interval(), 1);
    Lasting lasting = row.lasting();
    node.put("median", lasting == null ? null : lasting.median());
    node.put("medianLow", lasting == null ? null : lasting.low());
    node.put("medianHigh", lasting == null ? null : lasting.high());
    node.put("lowerBounds", row.bounds());
    node.put("held", row.held() == null ? null : row.held().count());
    node.put("heldPercent", row.held() == null ? null : 100 * row.held().share());
    limits(node, "heldPercent", row.heldInterval(comparison.question().confidence()), 100);
    dots(node.putArray("dots"), row.dots(), Map.of());
  }

  private void pair(ObjectNode node, FairPair pair) {
    levels(node.putArray("first"), pair.first());
    levels(node.putArray("second"), pair.second());
    node.put("basis", key(pair.basis()));
    node.put("difference", pair.estimate());
    node.put("low", pair.low());
    node.put("high", pair.high());
    node.put("verdict", key(pair.size()));
    node.put("onlyMeasuring", pair.onlyMeasuring());
    node.put("morePieces", pair.morePieces());
    if (pValues) {
      node.put("pHolm", pair.p());
    }
  }

  private static void grid(ObjectNode node, FactorTables.Grid grid) {
    node.put("rowFactor", grid.row().key());
    node.put("columnFactor", grid.column().key());
    ArrayNode cells = node.putArray("cells");
    for (FactorTables.Cell each : grid.cells()) {
      ObjectNode cell = cells.addObject();
      cell.put("row", each.row());
      cell.put("column", each.column());
      cell.put("pieces", each.pieces());
      cell.put("students", each.students());
      cell.put("mean", each.mean());
      cell.put("median", each.median());
      cell.put("lowerBounds", each.bounds());
      cell.put("heldPercent", each.heldPercent());
    }
  }

  private static void dots(ArrayNode all, List<Dot> dots, Map<UUID, List<UUID>> photos) {
    for (Dot each : dots) {
      ObjectNode node = all.addObject();
      node.put("code", each.code());
      node.put("student", each.who());
      node.put("value", each.value());
      node.put("atLeast", each.atLeast());
      List<UUID> found = photos.getOrDefault(each.pieceId(), List.of());
      if (!found.isEmpty()) {
        levels(node.putArray("photos"), found.stream().map(UUID::toString).toList());
      }
    }
  }

  private static void levels(ArrayNode node, List<String> all) {
    all.forEach(node::add);
  }

  static void limits(ObjectNode node, String name, @Nullable Interval interval, double times) {
    node.put(name + "Low", interval == null ? null : times * interval.low());
    node.put(name + "High", interval == null ? null : times * interval.high());
  }

  private static String key(Enum<?> each) {
    return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
