package walebook.command;

import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.compare.Names;
import walebook.record.FaultSeen;
import walebook.record.Measure;
import walebook.record.Needle;
import walebook.record.PullReading;
import walebook.record.Setting;
import walebook.record.TestPiece;

/** A test piece for programs. Lengths in mm, shares in percent; names end in their unit. */
final class PieceJson {
  private PieceJson() {}

  static ObjectNode of(TestPiece piece, Names names) {
    ObjectNode json = Json.object();
    json.put("code", piece.code());
    json.put("student", names.of(piece.whose().studentId()));
    Json.date(json, "sewnOn", piece.whose().sewnOn());
    json.put("cloth", names.of(piece.cloth().clothId()));
    Json.key(json, "grain", piece.cloth().grain());
    json.put("layers", piece.cloth().layers());
    put(json, piece.setting(), names);
    put(json, piece.measure(), names);
    json.put("grade", piece.seen().grade());
    Json.key(json, "outcome", piece.seen().outcome());
    ArrayNode faults = json.putArray("faults");
    piece.seen().faults().forEach(each -> faults.add(fault(each)));
    json.put("remark", piece.seen().remark());
    json.put("changed", piece.parent() == null ? null : piece.parent().changed());
    return json;
  }

  private static void put(ObjectNode json, Setting setting, Names names) {
    Json.key(json, "method", setting.method());
    json.put("machine", setting.machineId() == null ? null : names.of(setting.machineId()));
    Json.key(json, "machineKind", setting.machineKind());
    json.put("stitch", setting.stitchType());
    json.put("stitchName", setting.stitchName());
    json.put("dialWidth", setting.dialWidth());
    json.put("dialLength", setting.dialLength());
    json.put("sewnWidthMm", setting.sewnWidthMm());
    json.put("sewnLengthMm", setting.sewnLengthMm());
    Needle needle = setting.needle();
    Json.key(json, "needlePoint", needle == null ? null : needle.point());
    json.put("needleNm", needle == null ? null : needle.nm());
    json.put("thread", setting.thread());
    Json.key(json, "pressure", setting.pressure());
    Json.key(json, "tension", setting.tension());
    json.put("differentialFeed", setting.differentialFeed());
    json.put("stabiliser", setting.stabiliser());
    json.put("hemMethod", setting.hemMethod());
  }

  private static void put(ObjectNode json, Measure measure, Names names) {
    json.put("gaugeMm", measure.gaugeMm());
    json.put("edgeBeforeMm", measure.edgeBeforeMm());
    json.put("edgeSewnMm", measure.edgeSewnMm());
    json.put("edgePressedMm", measure.edgePressedMm());
    ArrayNode pulls = json.putArray("pulls");
    for (PullReading each : measure.pulls()) {
      ObjectNode pull = pulls.addObject();
      Json.key(pull, "end", each.end());
      pull.put("lengthMm", each.endMm());
    }
    PullReading counting = measure.counting();
    Json.key(json, "end", counting == null ? null : counting.end());
    json.put("endMm", counting == null ? null : counting.endMm());
    json.put("seamStretchPercent", measure.seamStretchPercent());
    json.put("edgeChangePercent", measure.edgeChangePercent());
    Json.key(json, "broke", measure.broke());
    json.put("releasedMm", measure.releasedMm());
    json.put("restSeconds", measure.how().restS());
    json.put("needPercent", measure.needPercent());
    json.put("sewingMinutes", measure.sewingMinutes());
    Json.key(json, "fold", measure.how().fold());
    Json.key(json, "pull", measure.how().pull());
    json.put("loadGrams", measure.how().loadG());
    json.put("holdSeconds", measure.how().holdS());
    json.put("measuredBy", measure.measuredBy() == null ? null : names.of(measure.measuredBy()));
    Json.date(json, "measuredOn", measure.measuredOn());
  }

  private static ObjectNode fault(FaultSeen seen) {
    ObjectNode fault = Json.object();
    fault.put("fault", seen.fault());
    Json.key(fault, "place", seen.place());
    fault.put("severity", seen.severity());
    Json.key(fault, "when", seen.when());
    return fault;
  }

  /** A value as text for people. */
  static String text(JsonNode value) {
    if (value.isArray() || value.isObject()) {
      return value.values().stream().map(PieceJson::text).collect(Collectors.joining(" "));
    }
    return value.isNumber() ? walebook.quantity.Show.upTo(value.asDouble(), 2) : value.asString("");
  }
}
