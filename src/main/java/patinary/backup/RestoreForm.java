package patinary.backup;

/** Which backup of the folder is to be restored. */
class RestoreForm {

    public String file = "";
}
