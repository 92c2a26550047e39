package walebook.lesson;

import java.util.UUID;
import walebook.record.Tier;

/** A student to be planned for, and how much of the plan they take on. */
public record PlanStudent(UUID id, Tier tier) {}
