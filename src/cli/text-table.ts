/** Rows of cells in columns as wide as their widest cell; all but the first column may be set to the right. */
export const textTable = (rows: readonly (readonly string[])[], right = false): string => {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows
    .map((row) =>
      `  ${row
        .map((cell, column) =>
          right && column > 0 ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0),
        )
        .join('   ')}`.trimEnd(),
    )
    .join('\n');
};

/** Width of the widest line. */
export const widthOf = (text: string): number => Math.max(...text.split('\n').map((line) => line.length));
