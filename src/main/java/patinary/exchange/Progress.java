package patinary.exchange;

/** Is told how far a long work has come. */
public interface Progress {

    Progress SILENT = (file, rows) -> {};

    /** So many rows of a file are done. */
    void at(String file, long rows);
}
