package patinary.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import patinary.photos.PhotoFolder;

/** Puts the pictures themselves into an archive, each once. */
@Component
class PhotoExport {

    private final JdbcTemplate jdbc;
    private final PhotoFolder folder;

    PhotoExport(JdbcTemplate jdbc, PhotoFolder folder) {
        this.jdbc = jdbc;
        this.folder = folder;
    }

    /** A lost picture does not keep the rest of the shop from being saved; the manifest says that it is missing. */
    void write(ArchiveWriter writer, Progress progress) throws IOException {
        List<String> names = jdbc.queryForList("select distinct sha256 from photo order by sha256", String.class);
        long done = 0;
        for (String name : names) {
            Optional<Path> file = folder.full(name);
            if (file.isPresent()) {
                writer.file(PhotoTables.file(name), file.get());
            } else {
                writer.missing(PhotoTables.file(name));
            }
            done++;
        }
        progress.at(PhotoTables.FOLDER, done);
    }
}
