package patinary.backup;

/**
 * Where backups go, when, and how many are kept.
 *
 * @param byItself whether one is made every day without being asked for
 * @param folder the folder; empty for {@code backups} in the data folder
 * @param atHour the hour of the shop's day from which on it is made, 0 to 23
 * @param keep how many are kept in the folder, 1 to 60
 * @param warnAfterDays after how many days without a good one the home page warns, 1 to 90
 */
record BackupPlan(boolean byItself, String folder, int atHour, int keep, int warnAfterDays) {

    /** What holds until somebody says otherwise. */
    static final BackupPlan USUAL = new BackupPlan(true, "", 3, 5, 3);
}
