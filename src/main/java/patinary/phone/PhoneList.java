package patinary.phone;

/**
 * A list that forms on a phone choose from, kept there for when there is no reception. A phone may be lost: no buyer's
 * name and no total of the shop belongs into one.
 */
public interface PhoneList {

    /** The name a form asks for, in {@code data-list}. */
    String name();

    /** The rows, small records in a list; for a plain select each has a {@code value} and a {@code text}. */
    Object rows();
}
