package patinary.phone;

import java.util.function.Supplier;

/**
 * A list that forms on a phone choose from, kept there for when there is no reception. A phone may be lost: no buyer's
 * name and no total of the shop belongs into one.
 */
public interface PhoneList {

    /** The name a form asks for, in {@code data-list}. */
    String name();

    /** The rows, small records in a list; for a plain select each has a {@code value} and a {@code text}. */
    Object rows();

    /** Whether it lets costs or profit be guessed: then it does not go to the phone of a helper. */
    default boolean tellsCosts() {
        return false;
    }

    /** A list under a name, read anew whenever a phone asks. */
    static PhoneList of(String name, Supplier<?> rows) {
        return new PhoneList() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Object rows() {
                return rows.get();
            }
        };
    }
}
