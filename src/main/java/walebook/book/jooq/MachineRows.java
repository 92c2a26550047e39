package walebook.book.jooq;

import java.util.List;
import org.jooq.Record;
import walebook.book.jooq.made.tables.records.MachineDialRecord;
import walebook.book.jooq.made.tables.records.MachineRecord;
import walebook.record.Dial;
import walebook.record.DialReading;
import walebook.record.Keyed;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.StepDial;

/** Machines as rows. */
final class MachineRows {
  private MachineRows() {}

  static MachineRecord row(Machine machine) {
    MachineRecord row = Rows.stamped(new MachineRecord(), machine.id(), machine.stamp());
    row.setNumber((long) machine.number());
    row.setName(machine.name());
    row.setKind(machine.kind().key());
    row.setNeedleToKnifeMm(machine.needleToKnifeMm());
    row.setPressureLower(machine.pressure().lower());
    row.setPressureNormal(machine.pressure().normal());
    row.setPressureHigher(machine.pressure().higher());
    row.setTensionLower(machine.tension().lower());
    row.setTensionNormal(machine.tension().normal());
    row.setTensionHigher(machine.tension().higher());
    row.setFeedLeast(machine.feedLeast());
    row.setFeedMost(machine.feedMost());
    row.setIsRetired(machine.retired());
    row.setRemark(machine.remark());
    return row;
  }

  static Machine machine(MachineRecord row, List<String> stitches, List<DialReading> dials) {
    return new Machine(
        row.getId(),
        Math.toIntExact(row.getNumber()),
        row.getName(),
        Keyed.of(MachineKind.class, row.getKind()),
        stitches,
        row.getNeedleToKnifeMm(),
        new StepDial(row.getPressureLower(), row.getPressureNormal(), row.getPressureHigher()),
        new StepDial(row.getTensionLower(), row.getTensionNormal(), row.getTensionHigher()),
        row.getFeedLeast(),
        row.getFeedMost(),
        dials,
        row.getRemark(),
        row.getIsRetired(),
        Rows.stamp(row));
  }

  static MachineDialRecord row(DialReading dial, Machine machine) {
    MachineDialRecord row = Rows.stamped(new MachineDialRecord(), dial.id(), machine.stamp());
    row.setMachineId(machine.id());
    row.setTermId(dial.termId());
    row.setWhat(dial.what().key());
    row.setDial(dial.dial());
    row.setSewnMm(dial.sewnMm());
    row.setMeasuredOn(dial.measuredOn());
    return row;
  }

  static DialReading dial(Record any) {
    MachineDialRecord row = any.into(MachineDialRecord.class);
    return new DialReading(
        row.getId(),
        row.getTermId(),
        Keyed.of(Dial.class, row.getWhat()),
        row.getDial(),
        row.getSewnMm(),
        row.getMeasuredOn());
  }
}
