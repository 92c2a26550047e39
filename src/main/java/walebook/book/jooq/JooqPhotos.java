package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.PHOTO;
import static walebook.book.jooq.made.Tables.PHOTO_IMAGE;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Condition;
import walebook.book.Photos;
import walebook.book.jooq.made.tables.records.PhotoImageRecord;
import walebook.book.jooq.made.tables.records.PhotoRecord;
import walebook.record.PhotoInfo;

/** Photos; the pictures stand apart from what lists need. */
record JooqPhotos(Access access) implements Photos {

  @Override
  public void add(PhotoInfo info, byte[] image) {
    PhotoRecord row = Rows.stamped(new PhotoRecord(), info.id(), info.stamp());
    row.setPieceId(info.pieceId());
    row.setClothId(info.clothId());
    row.setCaption(info.caption());
    row.setMediaType(info.mediaType());
    row.setWidthPx((long) info.widthPx());
    row.setHeightPx((long) info.heightPx());
    row.setThumbnail(info.thumbnail());
    PhotoImageRecord picture = Rows.stamped(new PhotoImageRecord(), info.id(), info.stamp());
    picture.setImage(image);
    access.write(
        dsl -> {
          access.insert(row);
          access.insert(picture);
          return info;
        });
  }

  @Override
  public List<PhotoInfo> ofPiece(UUID pieceId) {
    return list(PHOTO.PIECE_ID.eq(pieceId));
  }

  @Override
  public List<PhotoInfo> ofCloth(UUID clothId) {
    return list(PHOTO.CLOTH_ID.eq(clothId));
  }

  @Override
  public Map<UUID, List<UUID>> idsOf(List<UUID> pieceIds) {
    return pieceIds.isEmpty()
        ? Map.of()
        : access.read(
            dsl ->
                dsl.select(PHOTO.PIECE_ID, PHOTO.ID)
                    .from(PHOTO)
                    .where(PHOTO.PIECE_ID.in(pieceIds))
                    .orderBy(PHOTO.ID)
                    .fetchGroups(PHOTO.PIECE_ID, PHOTO.ID));
  }

  private List<PhotoInfo> list(Condition which) {
    return access.read(
        dsl -> dsl.selectFrom(PHOTO).where(which).orderBy(PHOTO.ID).fetch().map(JooqPhotos::info));
  }

  static PhotoInfo info(PhotoRecord row) {
    return new PhotoInfo(
        row.getId(),
        row.getPieceId(),
        row.getClothId(),
        row.getCaption(),
        row.getMediaType(),
        Math.toIntExact(row.getWidthPx()),
        Math.toIntExact(row.getHeightPx()),
        row.getThumbnail(),
        Rows.stamp(row));
  }

  @Override
  public byte[] image(UUID photoId) {
    PhotoImageRecord row =
        access.read(
            dsl -> dsl.selectFrom(PHOTO_IMAGE).where(PHOTO_IMAGE.ID.eq(photoId)).fetchOne());
    if (row == null) {
      throw new IllegalArgumentException("no photo " + photoId);
    }
    return row.getImage();
  }
}
