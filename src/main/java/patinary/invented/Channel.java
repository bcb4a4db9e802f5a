package patinary.invented;

/** Where the invented shop sells, with what each takes of a sale. */
enum Channel {
    STALL("Saturday stall (invented)", 0, 0, false),
    WEB("Own web shop (invented)", 29, 30, true),
    QUAY("Lantern Quay (invented)", 65, 25, true),
    BARGE("Painted Barge (invented)", 90, 0, true);

    private final String title;
    private final int perMille;
    private final int fixed;
    private final boolean posts;

    Channel(String title, int perMille, int fixed, boolean posts) {
        this.title = title;
        this.perMille = perMille;
        this.fixed = fixed;
        this.posts = posts;
    }

    String title() {
        return title;
    }

    /** The fee of a sale, in cents, rounded half up. */
    long fee(long price) {
        return (price * perMille + 500) / 1000 + fixed;
    }

    /** Whether things go by post, and the money lies with the channel until it is paid out. */
    boolean posts() {
        return posts;
    }

    /** Its percentage as it stands in its rule. */
    java.math.BigDecimal percent() {
        return java.math.BigDecimal.valueOf(perMille, 1);
    }

    int fixed() {
        return fixed;
    }
}
