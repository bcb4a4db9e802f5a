package patinary.pieces;

/** Pieces that become one. */
class JoinForm extends PiecePicks {

    public String id = "";
    public String date = "";

    /** The piece that the others become part of; empty for a new one. */
    public String into = "";

    public String title = "";
    public String note = "";
}
