package patinary.selling;

import java.util.UUID;
import patinary.web.Ids;

/** The id a form was drawn with; the document that comes of it bears it, so that a form sent twice is one document. */
final class FormId {

    private FormId() {}

    /** A fresh id where the form brought none that can be read. */
    static UUID read(String typed) {
        return Ids.read(typed).orElseGet(UUID::randomUUID);
    }
}
