import type { Figure } from './figure.ts';

const HEAD = ['req.', 'figure', 'measured', 'promised', '', 'beside it'] as const;

/** The figures as a Markdown table, with the promise and whether it is met beside each. */
export function table(figures: readonly Figure[]): string {
  const rows = figures.map((figure) => [
    String(figure.requirement ?? ''),
    figure.what,
    figure.value === null ? 'not measured' : withUnit(figure.value, figure.unit),
    promise(figure),
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

function promise({ atMost, atLeast, unit }: Figure): string {
  if (atLeast === undefined) return atMost === null ? '' : `≤ ${withUnit(atMost, unit)}`;
  return atMost === null
    ? `≥ ${withUnit(atLeast, unit)}`
    : `${withUnit(atLeast, unit)} to ${withUnit(atMost, unit)}`;
}

function verdict({ value, atMost, atLeast }: Figure): string {
  if ((atMost === null && atLeast === undefined) || value === null) return '';
  return value <= (atMost ?? value) && value >= (atLeast ?? value) ? 'met' : 'NOT MET';
}

function withUnit(value: number, unit: Figure['unit']): string {
  if (unit === 'checks/s') return `${value.toExponential(1)} ${unit}`;
  if (unit === 'exponent') return value.toFixed(2);
  const digits = unit === '×' ? (value < 20 ? 2 : 0) : unit === 'ms' || unit === 'MB' ? 1 : 0;
  const number = Number.isInteger(value) && unit !== '×' ? String(value) : value.toFixed(digits);
  return unit === '×' ? `${number} ×` : `${number} ${unit}`;
}
