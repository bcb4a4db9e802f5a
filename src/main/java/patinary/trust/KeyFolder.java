package patinary.trust;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.PrivateKey;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.util.Optional;
import java.util.Set;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;

/**
 * Keeps keys and certificates as text (PEM) in a folder that only the owner of the program may open. A file is written
 * beside its place first and never readable by others for a moment.
 */
final class KeyFolder {

    private final Path folder;
    private final boolean posix;

    KeyFolder(Path folder) {
        this.folder = folder;
        this.posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    /**
     * Empty where nothing is kept under the name.
     *
     * @throws IOException where something is kept but cannot be read; it is never silently replaced
     */
    Optional<Credential> read(String name) throws IOException {
        if (!Files.exists(file(name))) {
            return Optional.empty();
        }
        try (Reader text = Files.newBufferedReader(file(name), StandardCharsets.US_ASCII);
                PEMParser parser = new PEMParser(text)) {
            PrivateKey key = new JcaPEMKeyConverter().getPrivateKey((PrivateKeyInfo) parser.readObject());
            X509Certificate certificate =
                    new JcaX509CertificateConverter().getCertificate((X509CertificateHolder) parser.readObject());
            return Optional.of(new Credential(key, certificate));
        } catch (IOException | CertificateException | RuntimeException unreadable) {
            throw new IOException(
                    "Cannot be read: " + file(name) + ". Put it back from a copy, or remove it.", unreadable);
        }
    }

    /** Key and certificate go into one file, so that a crash between the two cannot part them. */
    void write(String name, Credential credential) throws IOException {
        StringWriter text = new StringWriter();
        try (JcaPEMWriter pem = new JcaPEMWriter(text)) {
            pem.writeObject(new JcaPKCS8Generator(credential.key(), null));
            pem.writeObject(credential.certificate());
        }
        Files.createDirectories(folder.toAbsolutePath().getParent());
        makeFolder();
        Path part = Files.createTempFile(folder, name, ".part", onlyOwner("rw-------"));
        try {
            closeToOthers(part);
            Files.writeString(part, text.toString(), StandardCharsets.US_ASCII, StandardOpenOption.SYNC);
            Files.move(part, file(name), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    Path file(String name) {
        return folder.resolve(name + ".pem");
    }

    private void makeFolder() throws IOException {
        try {
            Files.createDirectory(folder, onlyOwner("rwx------"));
        } catch (FileAlreadyExistsException there) {
            if (!Files.isDirectory(folder)) {
                throw there;
            }
        }
    }

    private FileAttribute<?>[] onlyOwner(String permissions) {
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    /** Where there are no permissions in the manner of Unix, what the file system offers in their place. */
    private void closeToOthers(Path file) throws IOException {
        if (posix) {
            Files.setPosixFilePermissions(file, Set.copyOf(PosixFilePermissions.fromString("rw-------")));
        } else if (!file.toFile().setReadable(false, false) || !file.toFile().setReadable(true, true)) {
            System.getLogger(KeyFolder.class.getName())
                    .log(System.Logger.Level.WARNING, "See to it that nobody else can read {0}", file);
        }
    }
}
