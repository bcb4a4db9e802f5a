package patinary.exchange;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** An archive as a zip. Entries bear no time of their own: the same shop gives the same bytes. */
final class ZipSink implements ArchiveSink {

    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipOutputStream zip;

    ZipSink(ZipOutputStream zip) {
        this.zip = zip;
    }

    @Override
    public OutputStream open(String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        return new FilterOutputStream(zip) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                zip.write(bytes, from, length);
            }

            @Override
            public void close() throws IOException {
                zip.closeEntry();
            }
        };
    }
}
