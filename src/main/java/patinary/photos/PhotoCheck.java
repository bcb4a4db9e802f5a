package patinary.photos;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Service;

/** Holds the files of photos against their rows; changes nothing. */
@Service
public class PhotoCheck {

    /**
     * Something that is not as it must be.
     *
     * @param sha256 the name of the file
     */
    public record Finding(What what, String sha256) {

        /** Whether a photo is lost; a file too many is only in the way, and swept away in time. */
        public boolean isLoss() {
            return what != What.UNKNOWN;
        }
    }

    public enum What {
        /** A row's file is not there. */
        MISSING,
        /** A row's file is not the one that was kept. */
        ALTERED,
        /** No row names the file. */
        UNKNOWN
    }

    private final PhotoRows rows;
    private final PhotoFolder folder;

    PhotoCheck(PhotoRows rows, PhotoFolder folder) {
        this.rows = rows;
        this.folder = folder;
    }

    /** Everything that is not as it must be; reads every file. */
    public List<Finding> run() {
        List<Finding> findings = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Photo photo : rows.all()) {
            if (known.add(photo.sha256())) {
                look(photo.sha256()).ifPresent(what -> findings.add(new Finding(what, photo.sha256())));
            }
        }
        folder.names(Instant.MAX).stream()
                .filter(name -> !known.contains(name))
                .forEach(name -> findings.add(new Finding(What.UNKNOWN, name)));
        return findings;
    }

    private Optional<What> look(String sha256) {
        Optional<Path> file = folder.full(sha256);
        if (file.isEmpty()) {
            return Optional.of(What.MISSING);
        }
        try {
            boolean same = ReadyPhoto.sha256(Files.readAllBytes(file.get())).equals(sha256);
            return same ? Optional.empty() : Optional.of(What.ALTERED);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
