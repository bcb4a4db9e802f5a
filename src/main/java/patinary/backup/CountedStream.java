package patinary.backup;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Counts what goes through. */
final class CountedStream extends FilterOutputStream {

    private long written;

    CountedStream(OutputStream stream) {
        super(stream);
    }

    @Override
    public void write(int one) throws IOException {
        out.write(one);
        written++;
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
        written += length;
    }

    long written() {
        return written;
    }
}
