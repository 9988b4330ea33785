// A plain table for the terminal: columns padded to their widest cell, numbers to the right.

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
}

export function writeTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, index) =>
    Math.max(column.title.length, ...rows.map((row) => (row[index] ?? '').length)),
  );
  const line = (cells: readonly string[]): string =>
    columns
      .map((column, index) => {
        const cell = cells[index] ?? '';
        const width = widths[index] ?? 0;
        return column.align === 'right' ? cell.padStart(width) : cell.padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return [line(columns.map((column) => column.title)), ...rows.map(line)].map((text) => `${text}\n`).join('');
}

/** A number at so many significant digits, without an exponent where that stays readable. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0';
  const magnitude = Math.abs(value);
  if (magnitude < 1e-4 || magnitude >= 1e9) return value.toExponential(digits - 1);
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(magnitude)));
  return value.toFixed(Math.min(decimals, 15));
}

/** A number at so many decimals; never a minus before a zero. */
export function fixed(value: number | null, decimals: number): string {
  if (value === null) return '-';
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}
