package patinary.insight;

import java.util.List;
import org.springframework.http.ResponseEntity;
import patinary.shop.CurrentShop;
import patinary.web.CsvFile;

/** Rounds of pieces as a file, the same wherever a page opens them. */
final class RoundFile {

    private RoundFile() {}

    static ResponseEntity<byte[]> of(List<Round> rounds, PieceNames names, CurrentShop shop, String name) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "code",
                "title",
                "first_offered",
                "days",
                "ended",
                "channel",
                "watched_from_day",
                "set");
        names.named(Speeds.inOrder(rounds), Round::piece)
                .forEach(one -> file.row(
                        one.piece().code(),
                        one.piece().title(),
                        one.row().from(),
                        one.row().stay().days(),
                        one.row().exit(),
                        one.row().channel(),
                        one.row().stay().from(),
                        one.row().set() == null ? "" : one.row().set().toString()));
        return file.download(name);
    }
}
