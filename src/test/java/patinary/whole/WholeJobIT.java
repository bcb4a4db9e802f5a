package patinary.whole;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static patinary.whole.Hands.another;
import static patinary.whole.Hands.choose;
import static patinary.whole.Hands.count;
import static patinary.whole.Hands.jar;
import static patinary.whole.Hands.keep;
import static patinary.whole.Hands.offer;
import static patinary.whole.Hands.save;
import static patinary.whole.Hands.see;
import static patinary.whole.Hands.sent;
import static patinary.whole.Hands.sold;
import static patinary.whole.Hands.sum;
import static patinary.whole.Hands.supply;
import static patinary.whole.Hands.tap;
import static patinary.whole.Hands.text;
import static patinary.whole.Hands.thing;
import static patinary.whole.Hands.till;
import static patinary.whole.Hands.told;
import static patinary.whole.Hands.unpacked;
import static patinary.whole.Hands.use;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.ledger.Check;
import patinary.testing.Browser;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.TestDatabase;

/**
 * One person's first year, from an empty database to the folder for the accountant, by the pages alone: on a phone where she buys, works
 * and sells, on a laptop where she writes. Everything is invented; worked by hand:
 *
 * <pre>
 * bought  8 March, 8 % tax: box 4.00, tray 6.00, four frames at 3.00, two candlesticks at 5.00: 32.00 + 2.56 = 34.56
 *         9 March, no tax: lamp 8.00, stool 7.00, jug 2.50, mirror 9.50 = 27.00
 *         10 March: 200 ml of paint 20.00, 250 g of wax 12.50, 500 ml of sealer 25.00 = 57.50
 * used    15 March on box and tray: 40 ml of paint, 50 ml of sealer; 16 March on tray and frames: 20 ml of paint, 25 g of wax, all by eye
 * counted 17 March: paint 128 ml, so 72 ml were used for 60, 48 and 24 ml; sealer 450 ml, as thought; wax 220 g, so 30 g for 25
 * landed  box 4.32 + 2.40 + 1.25 = 7.97; tray 6.48 + 2.40 + 1.25 + 0.48 + 0.30 = 10.91; frame 3.24 + 0.48 + 0.30 = 4.02; candlestick 5.40
 * sold    a frame 12.00 and the candlesticks 28.00 at the stall; from the file the tray 45.00 + 6.00, fee 5.40, and a frame 12.00 + 4.00, fee
 *         1.90, which comes back for all of its 16.00, 1.60 of the fee returned
 * gross   12 + 28 + 45 + 12 + shipping 6 + 4 = 107.00, returns 16.00, net 91.00
 * cost    frame 4.02 + candlesticks 10.80 + tray 10.91 = 25.73, of it paid before the work 3.24 + 10.80 + 6.48 = 20.52, put on 5.21
 * stock   box 7.97, three frames 12.06, lamp, stool, jug and mirror 27.00 = 47.03; paint 12.80, wax 11.00, sealer 22.50 = 46.30; 93.33
 *         and 61.56 + 57.50 - 93.33 = 25.73 again
 * profit  91.00 - 25.73 = 65.27 gross; fees 5.40 + 1.90 - 1.60 = 5.70, rent of the stall 10.00; 65.27 - 15.70 = 49.57
 * cash    100.00 of her own - 34.56 - 27.00 - 10.00 + 40.00 = 68.44
 * </pre>
 */
@ShopTest(open = false)
@ExtendWith(Browser.class)
class WholeJobIT {

    private static final String ORDERS = """
            Order,Date,Item,Code,Price,Shipping,Fee,Buyer
            W-1,2025-03-24,Pond green tray,P0002,45.00,6.00,5.40,Ash
            W-2,2025-03-25,Picture frame,P0004,12.00,4.00,1.90,Fay
            """;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    @Test
    void fromAnEmptyShopToTheYearHandedOver(Browser.Visit visit) throws Exception {
        Page desk = opensTheShop(visit);
        Page phone = Hands.phone(visit);
        buysEightThings(phone);
        buysFourThingsWithoutReception(phone);
        buysThreeJars(desk);
        works(phone);
        countsTheJars(desk);
        offers(desk);
        sellsAtTheStall(phone);
        phone.context().close();
        bringsSalesIn(desk);
        givesMoneyBack(desk);
        looksWhatMoves(visit);
        putsRightWhatIsOpen(visit);
        handsTheYearOver(desk);
        assertThat(check.run()).isEmpty();
        assertThat(money()).isEqualTo(Map.of("Bank", 14250L, "Cash box", 6844L, "Web shop balance", 4530L));
    }

    private static Page opensTheShop(Browser.Visit visit) {
        Page page = visit.open("/");
        page.fill("#code", TestDatabase.SETUP_CODE);
        page.fill("#ownerName", InventedShop.OWNER);
        page.fill("#password", InventedShop.PASSWORD);
        page.fill("#shopName", InventedShop.NAME);
        page.selectOption("#timeZone", "America/New_York");
        page.fill("#hourlyRate", "20");
        page.fill("#firstDay", "2025-01-01");
        save(page);
        visit.signIn();
        see(page, "job-first-steps");
        page.click("main a[href='/channels/new']");
        page.fill("#name", "Stall");
        choose(page, "#place", "Cash box");
        save(page);
        page.click("main a[href='/channels/new']");
        page.fill("#name", "Web shop");
        page.fill("#newPlace", "Web shop balance");
        page.fill("[id='rules0.validFrom']", "2025-01-01");
        page.fill("[id='rules0.percent']", "10");
        page.fill("[id='rules0.fixed']", "0.30");
        save(page);
        return page;
    }

    private void buysEightThings(Page page) {
        page.navigate("/");
        page.click("main a[href='/buy']");
        thing(page, "4", "Cedar box", 1);
        another(page, "6", "Tin tray", 1);
        another(page, "3", "Picture frame", 4);
        another(page, "5", "Candlestick", 2);
        till(page, "Hill Road barn", "2025-03-08", "8");
        assertThat(page.locator("[data-total]")).hasText("$34.56");
        page.click("button.big");
        told(page, "recorded");
        sent(page);
    }

    private void buysFourThingsWithoutReception(Page page) {
        page.context().setOffline(true);
        thing(page, "8", "Brass lamp", 1);
        another(page, "7", "Milking stool", 1);
        another(page, "2.50", "Enamel jug", 1);
        another(page, "9.50", "Oval mirror", 1);
        till(page, "Mill Street shop", "2025-03-09", "0");
        see(page, "job-bought");
        page.click("button.big");
        told(page, "Saved on this phone");
        assertThat(number("select count(*) from receipt")).isEqualTo(1);
        page.context().setOffline(false);
        sent(page);
        assertThat(number("select count(*) from receipt")).isEqualTo(2);
        assertThat(number("select count(*) from piece")).isEqualTo(12);
    }

    private static void buysThreeJars(Page page) {
        supply(page, "Pond green", "Chalk paints", "VOLUME", "jar", "200 ml");
        supply(page, "Clear wax", "Waxes", "MASS", "tin", "250 g");
        supply(page, "Matt sealer", "Sealers", "VOLUME", "can", "500 ml");
        page.navigate("/receipts/new");
        page.check("input[name=day][value=OTHER]");
        page.fill("#date", "2025-03-10");
        page.fill("#newSource", "Paint counter");
        jar(page, 0, "Pond green: jar", "20");
        page.click("button[value=add-line]");
        jar(page, 1, "Clear wax: tin", "12.50");
        page.click("button[value=add-line]");
        jar(page, 2, "Matt sealer: can", "25");
        page.fill("#tillTotal", "57.50");
        choose(page, "#paidWith", "Bank");
        save(page);
        assertThat(page.locator("h1")).containsText("10 Mar 2025");
    }

    private static void works(Page page) {
        page.click("nav.bar a[href='/bench/now']");
        tap(page, "Cedar box", 0);
        tap(page, "Tin tray", 0);
        use(page, "Pond green", "40 ml");
        use(page, "Matt sealer", "50 ml");
        page.click("summary:has-text('Something went wrong')");
        page.fill("[id='mishaps0.what']", "Peeled off the tin");
        choose(page, "[name='mishaps[0].piece']", "P0002 Tin tray");
        page.fill("[id='mishaps0.surface']", "tin");
        choose(page, "[name='mishaps[0].supply']", "Sealers: Matt sealer");
        page.click("summary:has-text('Another day, a note')");
        keep(page, "Two coats, sealed", "90", "2025-03-15");
        tap(page, "Tin tray", 0);
        for (int frame = 0; frame < 4; frame++) {
            tap(page, "Picture frame", frame);
        }
        use(page, "Pond green", "20 ml");
        use(page, "Clear wax", "25 g");
        for (Locator ready : page.locator("[name=ready]:visible").all()) {
            ready.check();
        }
        see(page, "job-bench");
        keep(page, "Painted again, waxed", "60", "2025-03-16");
    }

    private static void countsTheJars(Page page) {
        page.navigate("/supplies");
        count(page, "Pond green", "128 ml", "12 ml more was used");
        count(page, "Matt sealer", "450 ml", "the books were right");
        count(page, "Clear wax", "220 g", "5 g more was used");
        page.navigate("/bench/mishaps");
        assertThat(page.locator("main")).containsText("Peeled off the tin");
    }

    private static void offers(Page page) {
        offer(page, "P0002", "SET", "Pond green tray", "45", true);
        offer(page, "P0007 P0008", "SET", "Pair of candlesticks", "28", false);
        offer(page, "P0003 P0004 P0005 P0006", "ALIKE", "Picture frame", "12", true);
        assertThat(page.locator("main")).containsText("4 of 4 are left");
    }

    private static void sellsAtTheStall(Page page) {
        page.navigate("/stall");
        page.click("[data-ware]:has-text('P0003')");
        page.fill("#got", "20");
        assertThat(page.locator("#stall-change")).containsText("8.00");
        page.click("details:has(#date) > summary");
        see(page, "job-stall");
        sold(page, "Picture frame");
        page.click("[data-ware]:has-text('P0007 P0008')");
        sold(page, "Pair of candlesticks");
    }

    private static void bringsSalesIn(Page page) {
        page.navigate("/sales/bring");
        page.setInputFiles(
                "#upload", new FilePayload("web-shop.csv", "text/csv", ORDERS.getBytes(StandardCharsets.UTF_8)));
        save(page);
        choose(page, "#channel", "Web shop");
        page.click("button.main[value=save]");
        page.click("main a.main");
        assertThat(page.locator("main .facts dd").first()).hasText("2");
        save(page);
        assertThat(page.locator("main")).containsText("W-2");
    }

    private static void givesMoneyBack(Page page) {
        page.click("main a:has-text('W-2')");
        page.click("main a:has-text('Give money back')");
        page.fill("#date", "2025-03-30");
        page.fill("[id='lines0.amount']", "12");
        page.check("[id='lines0.comesBack']");
        page.fill("#shipping", "4");
        page.fill("#feeBack", "1.60");
        assertThat(page.locator("#place option:checked")).hasText("Web shop balance");
        save(page);
        assertThat(page.locator("main")).containsText("−$0.30");
    }

    private static void looksWhatMoves(Browser.Visit visit) {
        Page page = visit.open("/moves/days");
        assertThat(page.locator("main tfoot")).containsText("6 days");
        visit.open("/moves/money?by=channel&from=2025-01-01&to=2025-12-31");
        see(page, "job-money");
        Locator sums = page.locator("section:has(#before-after-title) tfoot td");
        assertThat(sums).hasText(new String[] {"$20.52", "$5.21", "$25.73", "$85.30", "$59.57"});
    }

    /** The list before the seal leads to what is missing: her own money of the first day, and a count of the cash box. */
    private static void putsRightWhatIsOpen(Browser.Visit visit) {
        Page page = visit.open("/expenses/new");
        page.fill("#date", "2025-03-22");
        choose(page, "#category", "Rent of booth, stall or storage");
        page.fill("#amount", "10");
        choose(page, "#placeId", "Cash box");
        save(page);
        visit.open("/year/2025/seal");
        assertThat(page.locator("main tbody tr")).hasCount(2);
        putsIn(page, "Cash box", "100");
        page.navigate("/year/2025/seal");
        putsIn(page, "Bank", "200");
        page.navigate("/year/2025/seal");
        page.click("main a:has-text('Cash not counted')");
        page.click("main table a:has-text('Cash box')");
        page.click("main a[href^='/till-counts/new']");
        page.fill("#date", "2025-12-31");
        page.fill("#counted", "68.44");
        save(page);
        assertThat(page.locator("main")).containsText("Agrees with the books");
    }

    private static void putsIn(Page page, String place, String amount) {
        page.click("main a:has-text('below zero')");
        page.click("main table a:has-text('" + place + "')");
        page.click("main a[href^='/owner-money/new']");
        page.fill("#date", "2025-03-01");
        page.check("input[name=direction][value=IN]");
        page.fill("#amount", amount);
        assertThat(page.locator("#placeId option:checked")).hasText(place);
        save(page);
    }

    private static void handsTheYearOver(Page page) throws Exception {
        page.navigate("/year/2025/seal");
        assertThat(page.locator("main")).containsText("Nothing is open");
        page.check("#sure");
        save(page);
        assertThat(page.locator("main")).containsText("$49.57");
        see(page, "job-year");
        Map<String, byte[]> folder = unpacked(page.waitForDownload(() -> page.click("a[href='/year/2025.zip']"))
                .path());
        assertThat(text(folder, "README.txt")).startsWith("Records of 2025: " + InventedShop.NAME);
        assertThat(text(folder, "lines.csv"))
                .contains(
                        "income,1,Gross receipts or sales,gross_receipts,107.00,",
                        "income,2,Returns and allowances,returns,16.00,",
                        ",net_receipts,91.00,",
                        ",gross_profit,65.27,",
                        ",commissions_and_fees,5.70,",
                        ",rent_property,10.00,",
                        ",net_profit,49.57,",
                        ",cogs_purchases,61.56,",
                        ",cogs_materials,57.50,",
                        ",cogs_closing,93.33,",
                        ",cogs_total,25.73,");
        assertThat(text(folder, "manifest.sha256").lines())
                .hasSize(folder.size() - 2)
                .allSatisfy(line -> assertThat(line).startsWith(sum(folder.get(line.substring(66)))));
    }

    private Map<String, Long> money() {
        Map<String, Long> there = new TreeMap<>();
        jdbc.sql("select mp.name, sum(p.amount_minor) from posting p join money_place mp on mp.id = p.place_id "
                        + "where p.account = 'MONEY' group by mp.name")
                .query(row -> {
                    there.put(row.getString(1), row.getLong(2));
                });
        return there;
    }

    private long number(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
