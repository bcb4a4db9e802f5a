package patinary.photos;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** Takes photos in, puts them in order, moves them and takes them away. */
@Service
@Transactional
class Photos {

    /** Another picture was taken in under this id before. */
    static final class OtherPicture extends RuntimeException {

        private static final long serialVersionUID = 1L;

        OtherPicture(UUID id) {
            super("Photo " + id + " is another picture");
        }
    }

    /**
     * Where a new photo belongs.
     *
     * @param id its permanent id, made before it is sent
     */
    record Wanted(UUID id, Subject subject, Stage stage, String who) {}

    private final PhotoRows rows;
    private final PhotoFolder folder;
    private final Clock clock;

    Photos(PhotoRows rows, PhotoFolder folder, Clock clock) {
        this.rows = rows;
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Keeps a photo: its files first, then its row. One that is there already under this id is left as it is, because a
     * phone may send it twice.
     *
     * @throws OtherPicture where the id belongs to another picture
     */
    void add(Wanted wanted, ReadyPhoto ready) {
        Optional<Photo> known = rows.find(wanted.id());
        if (known.isPresent()) {
            if (!known.get().sha256().equals(ready.sha256())) {
                throw new OtherPicture(wanted.id());
            }
            return;
        }
        keep(ready);
        rows.insert(new Photo(
                wanted.id(),
                wanted.subject(),
                wanted.stage(),
                Integer.MAX_VALUE,
                ready.width(),
                ready.height(),
                ready.file(Size.FULL).length,
                ready.sha256(),
                ready.takenOn(),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                wanted.who(),
                null));
        place(wanted.id(), wanted.subject(), wanted.stage());
    }

    void restage(UUID id, Stage stage) {
        find(id);
        rows.restage(id, stage);
    }

    /** Puts a photo in front: it becomes the picture of its piece. */
    void putFirst(UUID id) {
        shift(id, Integer.MIN_VALUE / 2);
    }

    /** Moves a photo by so many places, to the front where negative. */
    void shift(UUID id, int by) {
        Subject subject = find(id).subject();
        List<UUID> ids =
                new ArrayList<>(rows.of(subject).stream().map(Photo::id).toList());
        int at = ids.indexOf(id);
        if (subject.kind() != Subject.Kind.NONE && at >= 0) {
            ids.remove(at);
            ids.add(Math.min(Math.max(at + by, 0), ids.size()), id);
            rows.reorder(ids);
        }
    }

    /** Gives waiting photos to a piece or a paper. */
    void match(List<UUID> ids, Subject subject, Stage stage) {
        for (UUID id : ids) {
            if (rows.find(id).filter(photo -> !photo.isAway()).isPresent()) {
                rows.move(id, subject, stage);
                place(id, subject, stage);
            }
        }
    }

    /** Takes a photo away; for {@link PhotoSweep#KEPT_AWAY} it can be brought back. */
    Photo takeAway(UUID id) {
        rows.setAway(id, clock.instant().truncatedTo(ChronoUnit.MICROS));
        return find(id);
    }

    Photo bringBack(UUID id) {
        rows.setAway(id, null);
        return find(id);
    }

    /** @throws NotFound where there is no such photo */
    @Transactional(readOnly = true)
    public Photo find(UUID id) {
        return rows.find(id).orElseThrow(() -> new NotFound("photo " + id));
    }

    /** New photos go to the end. The first of the finished piece goes to the front: it is what others should see. */
    private void place(UUID id, Subject subject, Stage stage) {
        if (subject.kind() == Subject.Kind.NONE) {
            return;
        }
        List<Photo> others = rows.of(subject).stream()
                .filter(photo -> !photo.id().equals(id))
                .toList();
        boolean first = stage == Stage.AFTER && others.stream().noneMatch(photo -> photo.stage() == Stage.AFTER);
        List<UUID> ids = new ArrayList<>(others.stream().map(Photo::id).toList());
        ids.add(first ? 0 : ids.size(), id);
        rows.reorder(Collections.unmodifiableList(ids));
    }

    private void keep(ReadyPhoto ready) {
        try {
            for (Size size : Size.values()) {
                folder.keep(ready.sha256(), size, ready.file(size));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
