package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.MACHINE;
import static walebook.book.jooq.made.Tables.MACHINE_DIAL;
import static walebook.book.jooq.made.Tables.MACHINE_STITCH;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import walebook.book.Ids;
import walebook.book.Shelf;
import walebook.book.jooq.made.tables.records.MachineDialRecord;
import walebook.book.jooq.made.tables.records.MachineStitchRecord;
import walebook.record.DialReading;
import walebook.record.Machine;

/** Machines with their stitches and dial readings. */
record MachineShelf(Access access) implements Shelf<Machine> {

  @Override
  public List<Machine> all() {
    return list(DSL.noCondition());
  }

  @Override
  public @Nullable Machine find(UUID id) {
    List<Machine> found = list(MACHINE.ID.eq(id));
    return found.isEmpty() ? null : found.get(0);
  }

  private List<Machine> list(Condition which) {
    return access.read(
        dsl -> {
          Map<UUID, List<String>> stitches =
              dsl.selectFrom(MACHINE_STITCH)
                  .orderBy(MACHINE_STITCH.STITCH_TYPE)
                  .fetchGroups(MACHINE_STITCH.MACHINE_ID, MACHINE_STITCH.STITCH_TYPE);
          Map<UUID, List<DialReading>> dials =
              dsl.selectFrom(MACHINE_DIAL)
                  .orderBy(MACHINE_DIAL.WHAT, MACHINE_DIAL.DIAL)
                  .fetchGroups(MACHINE_DIAL.MACHINE_ID, MachineRows::dial);
          return dsl.selectFrom(MACHINE)
              .where(which)
              .orderBy(MACHINE.NUMBER)
              .fetch(
                  row ->
                      MachineRows.machine(
                          row,
                          stitches.getOrDefault(row.getId(), List.of()),
                          dials.getOrDefault(row.getId(), List.of())));
        });
  }

  @Override
  public void add(Machine machine) {
    access.write(
        dsl -> {
          access.insert(MachineRows.row(machine));
          addParts(machine);
          return machine;
        });
  }

  @Override
  public void update(Machine machine) {
    access.write(
        dsl -> {
          access.update(MachineRows.row(machine));
          removeParts(dsl, machine.id());
          addParts(machine);
          return machine;
        });
  }

  private static void removeParts(DSLContext dsl, UUID machineId) {
    dsl.deleteFrom(MACHINE_STITCH).where(MACHINE_STITCH.MACHINE_ID.eq(machineId)).execute();
    dsl.deleteFrom(MACHINE_DIAL).where(MACHINE_DIAL.MACHINE_ID.eq(machineId)).execute();
  }

  private void addParts(Machine machine) {
    for (String stitch : machine.stitches()) {
      MachineStitchRecord row =
          Rows.stamped(new MachineStitchRecord(), Ids.next(), machine.stamp());
      row.setMachineId(machine.id());
      row.setStitchType(Objects.requireNonNull(stitch));
      access.insert(row);
    }
    for (DialReading dial : machine.dials()) {
      MachineDialRecord row = MachineRows.row(dial, machine);
      access.insert(row);
    }
  }
}
