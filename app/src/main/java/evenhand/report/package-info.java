/**
 * The two papers that are handed over, the customer's report and the set-up sheet, with the working behind them: content as data
 * first ({@link evenhand.report.Paper}), made by pure functions from the answers, then set as PDF or HTML.
 */
@NullMarked
package evenhand.report;

import org.jspecify.annotations.NullMarked;
