package patinary.photos;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import org.springframework.web.multipart.MultipartFile;
import patinary.web.Ids;

/** Takes the files of a form in, each for itself: one bad file keeps none of the others out. */
@Component
class Taking {

    /**
     * Where a form's photos belong, read from its fields.
     *
     * @param named what they are of, or null where they wait to be matched
     */
    record Belonging(UUID id, Subjects.@Nullable Named named, Stage stage) {

        Subject subject() {
            return named == null ? Subject.NOTHING_YET : named.subject();
        }
    }

    private final Subjects subjects;
    private final Photos photos;
    private final ImageWork work;

    Taking(Subjects subjects, Photos photos, ImageWork work) {
        this.subjects = subjects;
        this.photos = photos;
        this.work = work;
    }

    /** Where the photos belong; nothing, and an error, where the form does not say it rightly. */
    Optional<Belonging> read(PhotoForm form, Errors errors) {
        UUID id = Ids.read(form.id).orElse(null);
        if (id == null) {
            errors.reject("photos.error.id");
            return Optional.empty();
        }
        Subjects.Named named = Ids.read(form.of).flatMap(subjects::find).orElse(null);
        boolean wrongSubject = named != null
                && !form.subject.isEmpty()
                && !form.subject.equals(named.subject().kind().name());
        if (!form.of.isEmpty() && named == null || wrongSubject) {
            errors.rejectValue("of", "photos.error.of-unknown");
            return Optional.empty();
        }
        Stage stage = form.stageOr(named == null ? Stage.BEFORE : named.usual());
        if (stage == null || named != null && named.isPiece() == (stage == Stage.RECEIPT)) {
            errors.rejectValue("stage", "photos.error.stage");
            return Optional.empty();
        }
        return Optional.of(new Belonging(id, named, stage));
    }

    /**
     * Keeps what can be kept; what cannot is told in {@code errors} with the file's name.
     *
     * @return how many are kept
     */
    int keep(PhotoForm form, Belonging belonging, List<MultipartFile> files, String who, Errors errors) {
        List<MultipartFile> sent = sent(files);
        if (sent.isEmpty()) {
            errors.reject("photos.error.none");
        }
        int kept = 0;
        for (int i = 0; i < sent.size(); i++) {
            MultipartFile file = sent.get(i);
            try {
                byte[] bytes = file.getBytes();
                ReadyPhoto ready = work.run(() -> ReadyPhoto.of(bytes));
                UUID id = form.photoId(belonging.id(), i);
                photos.add(new Photos.Wanted(id, belonging.subject(), belonging.stage(), who), ready);
                kept++;
            } catch (RefusedPicture refused) {
                tell(errors, refused, name(file));
            } catch (Photos.OtherPicture other) {
                errors.reject("photos.error.other", new Object[] {name(file)}, null);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
        return kept;
    }

    /** A field without a file is sent as an empty one; a file that is empty itself has a name. */
    private static List<MultipartFile> sent(List<MultipartFile> files) {
        return files.stream()
                .filter(file -> !file.isEmpty() || !name(file).isEmpty())
                .toList();
    }

    private static void tell(Errors errors, RefusedPicture refused, String name) {
        List<Object> arguments = new ArrayList<>(List.of(name));
        arguments.addAll(List.of(refused.details()));
        errors.reject(refused.messageKey(), arguments.toArray(), null);
    }

    private static String name(MultipartFile file) {
        String name = file.getOriginalFilename();
        return name == null ? "" : name;
    }
}
