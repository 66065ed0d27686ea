/** The version of Tonefold, kept in each workbook that it writes. */
export const VERSION = "0.1.0";
