package patinary.handbook;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.ImageIO;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import patinary.web.Tongue;

/** All pages of the guide and the handbook, packed with the program from the project's own {@code docs}. */
@Component
class Library {

    /** The page that lists the others, each with one line. */
    static final String LIST = "README";

    private static final String PICTURES = "pictures/";

    private final TreeMap<String, Resource> files = new TreeMap<>();
    private final ConcurrentHashMap<String, Leaf> read = new ConcurrentHashMap<>();

    Library() {
        try {
            for (Shelf shelf : Shelf.values()) {
                gather(shelf, "");
                gather(shelf, PICTURES);
                for (Tongue tongue : Tongue.values()) {
                    gather(shelf, tongue.code() + "/");
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void gather(Shelf shelf, String folder) throws IOException {
        for (Resource file : new PathMatchingResourcePatternResolver()
                .getResources("classpath*:docs/" + shelf.word() + "/" + folder + "*.*")) {
            files.put(shelf.word() + "/" + folder + file.getFilename(), file);
        }
    }

    /**
     * A page in the language of the reader, or in English where it was not translated.
     *
     * @return nothing where there is no such page
     */
    Optional<Leaf> leaf(Shelf shelf, String name) {
        return leaf(shelf, name, Tongue.of(LocaleContextHolder.getLocale()))
                .or(() -> leaf(shelf, name, Tongue.ENGLISH));
    }

    /** A page in one language, where there is one. */
    Optional<Leaf> leaf(Shelf shelf, String name, Tongue tongue) {
        String folder = tongue == Tongue.ENGLISH ? "/" : "/" + tongue.code() + "/";
        String file = shelf.word() + folder + name + ".md";
        Optional<Leaf> english = tongue == Tongue.ENGLISH ? Optional.empty() : leaf(shelf, name, Tongue.ENGLISH);
        return Optional.ofNullable(files.get(file))
                .map(found -> read.computeIfAbsent(file, path -> {
                    Leaf own = Leaf.of(shelf, name, tongue, text(found), target -> size(shelf, target));
                    return english.map(own::anchoredAs).orElse(own);
                }));
    }

    /** Every page but the two lists. */
    Collection<Leaf> leaves() {
        return files.keySet().stream()
                .filter(file -> file.endsWith(".md") && !file.endsWith("/" + LIST + ".md"))
                .map(file -> file.substring(0, file.length() - ".md".length()).split("/"))
                .filter(parts -> parts.length == 2)
                .map(parts -> leaf(Shelf.valueOf(parts[0].toUpperCase(java.util.Locale.ROOT)), parts[1])
                        .orElseThrow())
                .toList();
    }

    /** An example that a page of the guide gives out. */
    Optional<byte[]> example(Shelf shelf, String name) {
        return Optional.ofNullable(files.get(shelf.word() + "/" + name + ".csv"))
                .map(file -> text(file).getBytes(StandardCharsets.UTF_8));
    }

    /** A picture that a page shows, as a JPEG file. */
    Optional<byte[]> picture(Shelf shelf, String name) {
        return Optional.ofNullable(files.get(shelf.word() + "/" + PICTURES + name + ".jpeg"))
                .map(Library::bytes);
    }

    private Pictures.Size size(Shelf shelf, String target) {
        Resource file = files.get(shelf.word() + "/" + target);
        if (file == null) {
            throw new IllegalArgumentException("no picture " + target);
        }
        try (InputStream bytes = file.getInputStream()) {
            BufferedImage image = ImageIO.read(bytes);
            return new Pictures.Size(image.getWidth(), image.getHeight());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static byte[] bytes(Resource file) {
        try {
            return file.getContentAsByteArray();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Resource file) {
        try {
            return file.getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
