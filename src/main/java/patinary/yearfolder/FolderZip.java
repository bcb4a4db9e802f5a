package patinary.yearfolder;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes the files of a folder one after the other and keeps nothing but the hash of each. */
final class FolderZip implements AutoCloseable {

    /** Writes the content of one file; it may close what it is given or not. */
    @FunctionalInterface
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    private static final int NOT_TOO_HARD = 4;

    private final ZipOutputStream zip;
    private final String folder;
    private final LocalDateTime moment;
    private final List<Manifest.Entry> entries = new ArrayList<>();

    /** @param moment stands on every file: the same year gives the same folder */
    FolderZip(OutputStream out, String folder, LocalDateTime moment) {
        zip = new ZipOutputStream(out);
        zip.setLevel(NOT_TOO_HARD);
        this.folder = folder;
        this.moment = moment;
    }

    /** @return the SHA-256 of the file, in small hexadecimal digits */
    String file(String name, Content content) throws IOException {
        ZipEntry entry = new ZipEntry(folder + "/" + name);
        entry.setTimeLocal(moment);
        zip.putNextEntry(entry);
        MessageDigest digest = sha256();
        OutputStream out = new Kept(new DigestOutputStream(zip, digest));
        content.to(out);
        out.flush();
        zip.closeEntry();
        String hash = HexFormat.of().formatHex(digest.digest());
        entries.add(new Manifest.Entry(hash, name));
        return hash;
    }

    /** All files written so far. */
    List<Manifest.Entry> entries() {
        return List.copyOf(entries);
    }

    @Override
    public void close() throws IOException {
        zip.finish();
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    /** What writes one file may not close the folder. */
    private static final class Kept extends FilterOutputStream {

        Kept(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
