/**
 * Rows as text, each column as wide as its widest cell, two spaces between.
 *
 * @param right which columns are flush right; the others are flush left
 */
export function tableText(rows: readonly (readonly string[])[], right: readonly boolean[]): string {
  const widths = right.map((_, column) => Math.max(0, ...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      widths
        .map((width, column) => {
          const cell = row[column] ?? "";
          return right[column] ? cell.padStart(width) : cell.padEnd(width);
        })
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
