package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import patinary.exchange.NewArchive;

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
                rows -> rows.add(
                        "name",
                        "Invented workroom of " + facts.lives().pieces() + " pieces",
                        "currency",
                        "USD",
                        "minor_digits",
                        2,
                        "costing_method",
                        "FIFO",
                        "hourly_rate",
                        usd(1800),
                        "tax_table",
                        "us-schedule-c",
                        "first_day",
                        Span.FIRST,
                        "time_zone",
                        "America/New_York"));
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
                rows.add("id", facts.id(table, i), "name", names.get(i));
            }
        });
    }

    private void places() throws IOException {
        archive.table("money_place", rows -> {
            rows.add("id", facts.id(Facts.BANK, 0), "name", "Bank account", "kind", "BANK");
            rows.add("id", facts.id(Facts.CASH, 0), "name", "Cash box", "kind", "CASH");
            for (Channel channel : Channel.values()) {
                if (channel.posts()) {
                    rows.add("id", facts.placeOf(channel), "name", "Balance: " + channel.title(), "kind", "CHANNEL");
                }
            }
        });
        archive.table("channel", rows -> {
            for (Channel channel : Channel.values()) {
                rows.add(
                        "id", facts.id("channel", channel.ordinal()),
                        "name", channel.title(),
                        "money_place_id", facts.placeOf(channel),
                        "passes_tax", false);
            }
        });
        archive.table("channel_fee", rows -> {
            for (Channel channel : Channel.values()) {
                rows.add(
                        "channel_id", facts.id("channel", channel.ordinal()),
                        "valid_from", Span.FIRST,
                        "percent", channel.percent(),
                        "fixed", usd(channel.fixed()),
                        "base", "PRICE_AND_SHIPPING");
            }
        });
    }

    private void supplies() throws IOException {
        archive.table("supply_line", rows -> {
            for (int line = 0; line < Assortment.LINES; line++) {
                rows.add("id", facts.id("line", line), "name", "Invented line " + (line + 1), "maker", "Made-up maker");
            }
        });
        archive.table("supply", rows -> {
            for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                rows.add(
                        "id",
                        facts.id("supply", supply),
                        "supply_line_id",
                        facts.id("line", Assortment.line(supply)),
                        "name",
                        "Invented paint " + (supply + 1),
                        "dimension",
                        "VOLUME");
            }
        });
        archive.table("supply_pack", rows -> {
            for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                rows.add(
                        "supply_id", facts.id("supply", supply),
                        "name", "jar",
                        "quantity", BigDecimal.valueOf(Assortment.CONTAINER));
            }
        });
    }

    private void pieces() throws IOException {
        archive.table(
                "piece",
                rows -> facts.lives()
                        .each(life -> rows.add(
                                "id", facts.id("piece", life.number()),
                                "code", "P%07d".formatted(life.number() + 1),
                                "title", Assortment.STYLES.get(life.style()) + ": " + Assortment.KINDS.get(life.kind()),
                                "kind_id", facts.id("object_kind", life.kind()),
                                "style_id", facts.id("style", life.style()),
                                "material", Assortment.MATERIALS.get(life.material()))));
    }
}
