package patinary.photos;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import org.springframework.web.multipart.MultipartFile;

/** Photos of papers for other features: taken in before the paper is stored, given to it afterwards. */
@Component
public class PaperPhotos {

    private final Taking taking;
    private final Photos photos;
    private final PhotoFiles files;

    PaperPhotos(Taking taking, Photos photos, PhotoFiles files) {
        this.taking = taking;
        this.photos = photos;
        this.files = files;
    }

    /** Keeps one photo among those that wait. What is wrong with it is told in {@code errors}. */
    public UUID keep(MultipartFile file, String who, Errors errors) {
        PhotoForm form = new PhotoForm();
        form.id = UUID.randomUUID().toString();
        UUID id = UUID.fromString(form.id);
        taking.read(form, errors).ifPresent(place -> taking.keep(form, place, List.of(file), who, errors));
        return id;
    }

    /**
     * The full picture.
     *
     * @throws patinary.web.NotFound where there is no such photo
     */
    public Optional<Path> file(UUID photo) {
        return files.find(photos.find(photo).sha256(), Size.FULL);
    }

    /** Gives a waiting photo to a document; one that belongs somewhere already stays there. */
    public void give(UUID photo, UUID document) {
        if (photos.find(photo).subject().kind() == Subject.Kind.NONE) {
            photos.match(List.of(photo), new Subject(Subject.Kind.DOCUMENT, document), Stage.RECEIPT);
        }
    }
}
