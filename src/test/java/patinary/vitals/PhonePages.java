package patinary.vitals;

import java.util.List;
import java.util.stream.Stream;

/** The pages made for a phone, and the long form of a receipt: their weight and speed are watched. */
final class PhonePages {

    static final List<String> ALL = Stream.concat(patinary.web.PhonePages.ALL.stream(), Stream.of("/receipts/new"))
            .toList();

    private PhonePages() {}
}
