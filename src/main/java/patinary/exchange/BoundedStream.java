package patinary.exchange;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipException;

/**
 * Stops where a packed file turns out larger than allowed, or cannot be unpacked: the size that a zip declares is only a claim.
 */
final class BoundedStream extends FilterInputStream {

    private final String name;
    private final long most;
    private long read;

    BoundedStream(InputStream stream, String name, long most) {
        super(stream);
        this.name = name;
        this.most = most;
    }

    @Override
    public int read() throws IOException {
        int next;
        try {
            next = super.read();
        } catch (ZipException | EOFException broken) {
            throw damaged();
        }
        count(next < 0 ? 0 : 1);
        return next;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int got;
        try {
            got = super.read(bytes, from, length);
        } catch (ZipException | EOFException broken) {
            throw damaged();
        }
        count(Math.max(got, 0));
        return got;
    }

    private ArchiveRefused damaged() {
        return new ArchiveRefused(ArchiveError.ofFile(name, "damaged"));
    }

    private void count(long more) {
        read += more;
        if (read > most) {
            throw new ArchiveRefused(ArchiveError.ofFile(name, "zip-size", String.valueOf(most)));
        }
    }
}
