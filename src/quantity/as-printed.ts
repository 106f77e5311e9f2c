/** A size of a table as one prints it: `95 mm2` is typed, `95 mm²` is read. */
export const asPrinted = (size: string): string => size.replace(/ mm2$/, ' mm²');
