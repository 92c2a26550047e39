/** Spreadsheets in: workbooks and separated text read into plain grids, within limits. */
@NullMarked
package walebook.sheet.in;

import org.jspecify.annotations.NullMarked;
