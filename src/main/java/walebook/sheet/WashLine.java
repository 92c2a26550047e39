package walebook.sheet;

import walebook.record.Cloth;
import walebook.record.ClothWash;

/** What one wash did to a cloth along one grain. */
record WashLine(Cloth cloth, ClothWash wash) {}
