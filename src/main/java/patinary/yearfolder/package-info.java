/** The year folder: one year's records for the accountant as tables, as a workbook, and as a summary to print. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"money", "ledger", "shop", "web", "photos", "taxyear", "taxbasis", "covering", "homeuse"
        })
package patinary.yearfolder;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
