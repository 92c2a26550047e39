package walebook.kit;

/**
 * A seam as it is sewn for a lesson.
 *
 * @param name what it is called, such as its combination of levels
 * @param stitchType ISO 4915 number
 * @param thicknessMm the sewn layers together, mm
 * @param stitchMm sewn stitch length, mm
 * @param widthMm swing or overedge width, mm; 0 for none
 * @param seamMm its length, mm
 * @param times how often each student sews it; a fraction where only some do
 */
public record SeamToSew(
    String name,
    String stitchType,
    double thicknessMm,
    double stitchMm,
    double widthMm,
    double seamMm,
    double times) {}
