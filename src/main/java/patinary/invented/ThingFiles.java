package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Line;

/** What there is in the invented shop. */
final class ThingFiles {

    private final Facts facts;
    private final NewArchive archive;

    ThingFiles(Facts facts, NewArchive archive) {
        this.facts = facts;
        this.archive = archive;
    }

    void write() throws IOException {
        archive.table(
                "shop",
                rows -> rows.add(new Line()
                        .with("name", "Invented workroom of " + facts.lives().pieces() + " pieces")
                        .with("currency", "USD")
                        .with("minor_digits", 2)
                        .with("costing_method", "FIFO")
                        .with("hourly_rate", usd(1800))
                        .with("tax_table", "us-schedule-c")
                        .with("first_day", Span.FIRST)
                        .with("time_zone", "America/New_York")
                        .with("language", "en")
                        .with("country", "US")));
        named("source", Assortment.SOURCES);
        named("style", Assortment.STYLES);
        named("object_kind", Assortment.KINDS);
        places();
        supplies();
        pieces();
    }

    private void named(String table, List<String> names) throws IOException {
        archive.table(table, rows -> {
            for (int i = 0; i < names.size(); i++) {
                rows.add(new Line().with("id", facts.id(table, i)).with("name", names.get(i)));
            }
        });
    }

    private void places() throws IOException {
        archive.table("money_place", rows -> {
            rows.add(new Line()
                    .with("id", facts.id(Facts.BANK, 0))
                    .with("name", "Bank account")
                    .with("kind", "BANK"));
            rows.add(new Line()
                    .with("id", facts.id(Facts.CASH, 0))
                    .with("name", "Cash box")
                    .with("kind", "CASH"));
            for (Channel channel : Channel.values()) {
                if (channel.posts()) {
                    rows.add(new Line()
                            .with("id", facts.placeOf(channel))
                            .with("name", "Balance: " + channel.title())
                            .with("kind", "CHANNEL"));
                }
            }
        });
        archive.table("channel", rows -> {
            for (Channel channel : Channel.values()) {
                rows.add(new Line()
                        .with("id", facts.id("channel", channel.ordinal()))
                        .with("name", channel.title())
                        .with("money_place_id", facts.placeOf(channel))
                        .with("passes_tax", false));
            }
        });
        archive.table("channel_fee", rows -> {
            for (Channel channel : Channel.values()) {
                rows.add(new Line()
                        .with("channel_id", facts.id("channel", channel.ordinal()))
                        .with("valid_from", Span.FIRST)
                        .with("percent", channel.percent())
                        .with("fixed", usd(channel.fixed()))
                        .with("base", "PRICE_AND_SHIPPING"));
            }
        });
    }

    private void supplies() throws IOException {
        archive.table("supply_line", rows -> {
            for (int line = 0; line < Assortment.LINES; line++) {
                rows.add(new Line()
                        .with("id", facts.id("line", line))
                        .with("name", "Invented line " + (line + 1))
                        .with("maker", "Made-up maker"));
            }
        });
        archive.table("supply", rows -> {
            for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                rows.add(new Line()
                        .with("id", facts.id("supply", supply))
                        .with("supply_line_id", facts.id("line", Assortment.line(supply)))
                        .with("name", "Invented paint " + (supply + 1))
                        .with("dimension", "VOLUME"));
            }
        });
        archive.table("supply_pack", rows -> {
            for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                rows.add(new Line()
                        .with("supply_id", facts.id("supply", supply))
                        .with("name", "jar")
                        .with("quantity", BigDecimal.valueOf(Assortment.CONTAINER)));
            }
        });
    }

    private void pieces() throws IOException {
        archive.table(
                "piece",
                rows -> facts.lives()
                        .each(life -> rows.add(new Line()
                                .with("id", facts.id("piece", life.number()))
                                .with("code", "P%07d".formatted(life.number() + 1))
                                .with(
                                        "title",
                                        Assortment.STYLES.get(life.style()) + ": " + Assortment.KINDS.get(life.kind()))
                                .with("kind_id", facts.id("object_kind", life.kind()))
                                .with("style_id", facts.id("style", life.style()))
                                .with("material", Assortment.MATERIALS.get(life.material())))));
    }
}
