package patinary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An archive as a folder. Texts such as a README beside the CSV files are left alone. */
final class FolderSource implements ArchiveSource {

    private final Path folder;
    private final Set<String> names;

    FolderSource(Path folder) throws IOException {
        this.folder = folder;
        names = new TreeSet<>(files(folder));
        Path photos = folder.resolve(PhotoTables.FOLDER);
        if (Files.isDirectory(photos, LinkOption.NOFOLLOW_LINKS)) {
            files(photos).forEach(name -> names.add(PhotoTables.FOLDER + name));
        }
    }

    private static Set<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .map(file -> file.getFileName().toString())
                    .filter(name -> !name.endsWith(".md"))
                    .collect(Collectors.toSet());
        }
    }

    @Override
    public Set<String> names() {
        return names;
    }

    @Override
    public InputStream open(String name) throws IOException {
        return Files.newInputStream(folder.resolve(name));
    }
}
