package patinary.bringing;

import org.springframework.web.util.UriComponentsBuilder;
import patinary.selling.ManySales;

/**
 * The way from an order of a file that wants a sold piece to the form of a sale, which settles who gets it. Once it is in the
 * books, the file's order is known by its number and stays out.
 *
 * @param order the channel's number
 * @param address the form, filled with what the file says; a supply from the shelf is added there by hand
 */
record SettleLink(String order, String address) {

    static SettleLink of(ManySales.Typed sale) {
        UriComponentsBuilder form = UriComponentsBuilder.fromPath("/sales/new")
                .queryParam("date", sale.date())
                .queryParam("channel", sale.channel())
                .queryParam("buyer", "{buyer}")
                .queryParam("order", "{order}")
                .queryParam("discount", sale.discount())
                .queryParam("shipping", sale.shipping())
                .queryParam("tax", sale.tax())
                .queryParam("fee", sale.fee());
        sale.lines().stream()
                .filter(line -> !line.codes().isBlank())
                .forEach(line -> form.queryParam("piece", line.codes()).queryParam("price", line.price()));
        return new SettleLink(
                sale.order(),
                form.encode().buildAndExpand(sale.buyer(), sale.order()).toUriString());
    }
}
