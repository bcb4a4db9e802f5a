package patinary.exchange;

import java.io.IOException;
import java.io.OutputStream;

/** Where an archive's files are written to, one after the other. */
interface ArchiveSink {

    /** Opens the next file; closing the stream ends it. */
    OutputStream open(String name) throws IOException;
}
