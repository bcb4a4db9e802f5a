package patinary.photos;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What comes beside the files. Without {@code of} they wait to be matched. */
class PhotoForm {

    public String id = "";
    public String of = "";
    public String subject = "";
    public String stage = "";

    /** Where a person is led to next: back here, or to the page of what the photo is of. */
    public String stay = "";

    /** The ids of several photos follow from the form's own, so that a form sent twice keeps them once. */
    UUID photoId(UUID first, int index) {
        return index == 0
                ? first
                : UUID.nameUUIDFromBytes((first + "/" + index).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Nullable
    Stage stageOr(Stage usual) {
        for (Stage known : Stage.values()) {
            if (known.name().equals(stage)) {
                return known;
            }
        }
        return stage.isEmpty() ? usual : null;
    }
}
