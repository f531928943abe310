/** A cell that a spreadsheet shows and never runs. */

/** Common practice: what begins like a formula gets an apostrophe; quoting is after RFC 4180. */
export function csvCell(text: string): string {
  const shown = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(shown) ? `"${shown.replaceAll('"', '""')}"` : shown;
}

export function csvLines(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
