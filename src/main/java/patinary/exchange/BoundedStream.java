package patinary.exchange;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipException;

/**
 * Stops where a packed file turns out larger than allowed, or cannot be unpacked: the size that a zip declares is only a claim.
 */
final class BoundedStream extends FilterInputStream {

    static final long NO_SUM = -1;

    private final String name;
    private final long most;
    private final long sum;
    private final CRC32 crc = new CRC32();
    private long read;

    BoundedStream(InputStream stream, String name, long most) {
        this(stream, name, most, NO_SUM);
    }

    /** @param sum the CRC-32 that the zip says, which its own reader does not compare; or {@link #NO_SUM} */
    BoundedStream(InputStream stream, String name, long most, long sum) {
        super(stream);
        this.name = name;
        this.most = most;
        this.sum = sum;
    }

    @Override
    public int read() throws IOException {
        int next;
        try {
            next = super.read();
        } catch (ZipException | EOFException broken) {
            throw damaged();
        }
        if (next < 0) {
            ended();
        } else {
            crc.update(next);
            count(1);
        }
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
        if (got < 0) {
            ended();
        } else {
            crc.update(bytes, from, got);
            count(got);
        }
        return got;
    }

    private void ended() {
        if (sum != NO_SUM && sum != crc.getValue()) {
            throw damaged();
        }
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
