package patinary.exchange;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An archive that is part of the program. */
final class ClasspathSource implements ArchiveSource {

    private final String folder;

    ClasspathSource(String folder) {
        this.folder = folder;
    }

    @Override
    public Set<String> names() {
        return Stream.concat(
                        Stream.of(Manifest.FILE), ArchiveTables.ALL.stream().map(ArchiveTable::file))
                .filter(name -> getClass().getResource(folder + name) != null)
                .collect(Collectors.toSet());
    }

    @Override
    public InputStream open(String name) throws IOException {
        InputStream stream = getClass().getResourceAsStream(folder + name);
        if (stream == null) {
            throw new FileNotFoundException(folder + name);
        }
        return stream;
    }
}
