package patinary.yearfolder;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxyear.YearPage;
import patinary.web.Tongue;

/** The year's lines on paper (PDF, ISO 32000), with what a reader must know of them and the fingerprint of the manifest. */
final class SummaryPdf {

    private final FolderWords words;
    private final CurrentShop shop;

    SummaryPdf(FolderWords words, CurrentShop shop) {
        this.words = words;
        this.shop = shop;
    }

    void write(YearTables.Year year, String manifest, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            // The same year gives the same file.
            document.setDocumentId((long) year.year());
            document.getDocumentInformation().setTitle(words.title(year.year()));
            PDRectangle paper = Tongue.isLetter(shop.locale()) ? PDRectangle.LETTER : PDRectangle.A4;
            try (SummaryPen pen = new SummaryPen(
                    document, paper, page -> words.say("summary.page", words.title(year.year()), page))) {
                head(pen, year);
                year.page().parts().forEach(part -> part(pen, part));
                end(pen, year, manifest);
            }
            document.save(out);
        }
    }

    private void head(SummaryPen pen, YearTables.Year year) {
        pen.heading(words.title(year.year()));
        pen.text(words.notAdvice());
        pen.fact(words.say("summary.shop"), shop.name());
        pen.fact(
                words.say("summary.period"),
                words.say(
                        "summary.period.days",
                        year.first().toString(),
                        year.last().toString()));
        pen.fact(words.say("summary.basis"), words.basis(year));
        pen.fact(words.say("summary.form"), words.form(year));
    }

    private void part(SummaryPen pen, YearPage.Part part) {
        List<YearPage.Line> known =
                part.lines().stream().filter(line -> line.amount() != null).toList();
        if (known.isEmpty()) {
            return;
        }
        pen.heading(words.part(part));
        for (YearPage.Line line : known) {
            pen.line(line.line().line(), line.line().title() + (line.line().check() ? " *" : ""), money(line.amount()));
        }
    }

    private void end(SummaryPen pen, YearTables.Year year, String manifest) {
        YearPage page = year.page();
        if (!page.unmapped().isEmpty()) {
            pen.heading(words.say("summary.on-no-line"));
            page.unmapped().forEach(sum -> pen.line("", sum.account() + " " + sum.category(), money(sum.shown())));
        }
        pen.heading(words.say("summary.agree"));
        pen.line("", words.say("summary.cost"), money(page.goods().cost()) + "; " + money(page.costByLedger()));
        pen.line("", words.say("summary.profit"), money(page.bookProfit()));
        pen.line("", words.say("summary.otherwise"), money(page.adjustments().profit()));
        pen.fact(
                words.say("summary.estimates"),
                year.estimates().none()
                        ? words.say("summary.estimates.none")
                        : words.say(
                                "summary.estimates.some",
                                money(year.estimates().cost()),
                                money(year.estimates().stock())));
        pen.text(words.say("summary.check"));
        pen.fact(words.say("summary.manifest"), manifest);
    }

    private String money(@Nullable Amount amount) {
        return amount == null ? "" : shop.currency().format(amount, words.locale());
    }
}
