import type { Figure } from './figure.ts';

const HEAD = ['req.', 'figure', 'measured', 'promised', '', 'beside it'] as const;

/** The figures as a Markdown table, with the promise and whether it is met beside each. */
export function table(figures: readonly Figure[]): string {
  const rows = figures.map((figure) => [
    String(figure.requirement ?? ''),
    figure.what,
    figure.value === null ? 'not measured' : withUnit(figure.value, figure.unit),
    figure.atMost === null ? '' : `≤ ${withUnit(figure.atMost, figure.unit)}`,
    verdict(figure),
    figure.beside,
  ]);
  const widths = HEAD.map((head, column) =>
    Math.max(3, head.length, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  return [line(HEAD), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n');
}

function verdict({ value, atMost }: Figure): string {
  if (atMost === null || value === null) return '';
  return value <= atMost ? 'met' : 'NOT MET';
}

function withUnit(value: number, unit: Figure['unit']): string {
  const digits = unit === '×' ? 2 : unit === 'ms' || unit === 'MB' ? 1 : 0;
  const number = Number.isInteger(value) && unit !== '×' ? String(value) : value.toFixed(digits);
  return unit === '×' ? `${number} ×` : `${number} ${unit}`;
}
