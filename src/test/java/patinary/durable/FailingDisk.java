package patinary.durable;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.h2.store.fs.FileBaseDefault;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * A disk for the embedded store, under {@code jdbc:h2:failing:/...}, that counts what is forced, can refuse to, and can be full.
 * Public, because H2 makes it.
 */
public final class FailingDisk extends FilePathWrapper {

    static final AtomicLong FORCED = new AtomicLong();
    static final AtomicBoolean REFUSES = new AtomicBoolean();
    static final AtomicBoolean FULL = new AtomicBoolean();

    @Override
    public String getScheme() {
        return "failing";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new File(getBase().open(mode));
    }

    static void register() {
        FilePath.register(new FailingDisk());
    }

    private static final class File extends FileBaseDefault {

        private final FileChannel file;

        File(FileChannel file) {
            this.file = file;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            if (REFUSES.get()) {
                throw new IOException("the disk is gone");
            }
            FORCED.incrementAndGet();
            file.force(metaData);
        }

        @Override
        public int write(ByteBuffer bytes, long position) throws IOException {
            if (FULL.get()) {
                throw new IOException("No space left on device");
            }
            return file.write(bytes, position);
        }

        @Override
        public int read(ByteBuffer bytes, long position) throws IOException {
            return file.read(bytes, position);
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            file.truncate(size);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }

        @Override
        public java.nio.channels.FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }
    }
}
