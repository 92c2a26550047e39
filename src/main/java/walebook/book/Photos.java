package walebook.book;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.record.PhotoInfo;

/** Photos of pieces and cloths. */
public interface Photos {
  void add(PhotoInfo info, byte[] image);

  List<PhotoInfo> ofPiece(UUID pieceId);

  List<PhotoInfo> ofCloth(UUID clothId);

  /** The photos of several pieces, by piece and oldest first; pieces without one are left out. */
  Map<UUID, List<UUID>> idsOf(List<UUID> pieceIds);

  /**
   * The picture itself.
   *
   * @throws IllegalArgumentException when there is no such photo
   */
  byte[] image(UUID photoId);
}
