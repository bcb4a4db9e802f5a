package patinary.bench;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import patinary.finishes.CautionBook;

/** The cautions for those who write down finishes. */
@Component
class FinishCautions implements CautionBook {

    private final Cautions cautions;

    FinishCautions(Cautions cautions) {
        this.cautions = cautions;
    }

    @Override
    public List<Text> all() {
        return cautions.all().stream().map(FinishCautions::text).toList();
    }

    @Override
    public List<Text> about(Collection<String> ids, Collection<String> words) {
        Stream<Caution> named = cautions.all().stream().filter(caution -> ids.contains(caution.id()));
        return Stream.concat(named, cautions.about(words).stream())
                .distinct()
                .sorted(Comparator.comparing(Caution::severity))
                .map(FinishCautions::text)
                .toList();
    }

    private static Text text(Caution caution) {
        return new Text(caution.id(), caution.severity().name(), caution.text(), caution.source());
    }
}
