package patinary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.util.Set;

/** Where an archive's files are read from. A file may be opened several times. */
interface ArchiveSource extends AutoCloseable {

    Set<String> names();

    InputStream open(String name) throws IOException;

    @Override
    default void close() throws IOException {}
}
