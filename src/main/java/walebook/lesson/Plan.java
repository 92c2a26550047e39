package walebook.lesson;

import java.util.List;

/** What a class sews or measures together, shared out so that the results pool. */
public sealed interface Plan permits ReadingsPlan, PiecesPlan {
  /** What the class wants to find out. */
  String question();

  /** Cloths the plan speaks of; the tutor says which cloth of the room stands for each. */
  List<ClothSlot> cloths();

  Tiers tiers();

  /** The kind as pack.yaml writes it. */
  String kind();

  /** How many combinations there are to share out. */
  int cellCount();

  /** A cloth of the plan: its letter and what cloth it should be. */
  record ClothSlot(String slot, String says) {}
}
