package patinary.phone;

import java.util.Map;

/** Several lists for a phone that are made of the same rows, which are so read once; else as {@link PhoneList}. */
public interface PhoneLists {

    /** The rows of each list under its name, read anew whenever a phone asks. */
    Map<String, ?> all();
}
