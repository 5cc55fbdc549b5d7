import type { Machine, Rotary } from '../catalog/catalog.ts';
import type { CheckId } from '../rules/checks/ids.ts';
import type { Decision } from '../rules/decision.ts';
import { featureOf } from '../rules/features/ordered.ts';
import { type ArrangementAt, arrangementAt, checksAt } from './checks-at.ts';
import { splitValuePath, withoutWhich } from './value-words.ts';
import { MACHINE_VALUE_WORDS, ROTARY_VALUE_WORDS } from './wording/catalog-values.ts';
import { MACHINE_PURPOSES, ROTARY_PURPOSES } from './wording/quote-purposes.ts';

/** A number that a seller has to confirm, and the checks that hang on it. */
export interface QuoteLine {
  /** `rotaries[wren].swing` */
  readonly value: string;
  readonly checks: readonly CheckId[];
}

/** What is asked about one row of the catalog. */
export interface QuoteRow {
  readonly list: 'machines' | 'rotaries';
  readonly id: string;
  /** it belongs to what is recommended or may still win; otherwise only what is not known is asked */
  readonly wanted: boolean;
  readonly lines: readonly QuoteLine[];
}

/** One seller's rows, in the order of the catalog. Rows whose maker is not known stand alone. */
export interface QuoteSheet {
  readonly rows: readonly QuoteRow[];
}

/** The sheets for all sellers: of what is recommended; of what may still win; and of what else was left out. */
export function quoteSheets(decision: Decision): readonly QuoteSheet[] {
  const { catalog } = decision.inputs;
  const ids = decision.recommended === null ? decision.contenders : [decision.recommended];
  const quoted = ids.flatMap((id) => arrangementAt(decision, id) ?? []);
  const found = new Map<string, Set<CheckId>>();
  const note = (path: string, check?: CheckId): void => {
    const value = inOneDrawing(path);
    const checks = found.get(value) ?? new Set();
    if (check !== undefined) checks.add(check);
    found.set(value, checks);
  };
  for (const at of quoted) noteArrangement(decision, at, note);
  for (const { answer, ask, checks } of decision.unknowns) {
    if (ask !== 'seller') continue;
    note(answer);
    for (const check of checks) note(answer, check);
  }
  const rowsOf = (
    list: QuoteRow['list'],
    rows: readonly (Machine | Rotary)[],
  ): readonly { readonly maker: string; readonly row: QuoteRow }[] =>
    rows.flatMap(({ id, from: { maker } }) => {
      const lines = linesOf(list, id, found);
      const wanted = quoted.some(({ arrangement: { machine, rotary } }) =>
        list === 'machines' ? machine === id : rotary === id,
      );
      return lines.length === 0 ? [] : [{ maker, row: { list, id, wanted, lines } }];
    });
  const all = [...rowsOf('machines', catalog.machines), ...rowsOf('rotaries', catalog.rotaries)];
  const sheets = new Map<string, QuoteRow[]>();
  for (const { maker, row } of all) {
    const seller = maker === 'unknown' ? `${row.list} ${row.id}` : `maker ${maker}`;
    sheets.set(seller, [...(sheets.get(seller) ?? []), row]);
  }
  return [...sheets.values()].map((rows) => ({ rows }));
}

/** Every box of a housing stands in one drawing: the seller sends it once. Example: `rotaries[wren].housing[1]` → `rotaries[wren].housing`. */
export const inOneDrawing = (value: string): string => value.replace(/\.housing\[\d+\]$/, '.housing');

/** Every catalog value that a check or a price of the arrangement hangs on, and what the site needs. */
function noteArrangement(
  { inputs: { answers, catalog } }: Decision,
  at: ArrangementAt,
  note: (value: string, check?: CheckId) => void,
): void {
  const { machine, rotary, prices, clearance } = at.arrangement;
  const row = catalog.machines.find(({ id }) => id === machine);
  const owned = answers.shop.machine === machine;
  for (const [key, { stands, table }] of Object.entries(MACHINE_PURPOSES)) {
    if ((owned && stands) || (table && row?.table === null)) continue;
    note(`machines[${machine}].${key}`);
  }
  if (rotary !== null) for (const key of Object.keys(ROTARY_PURPOSES)) note(`rotaries[${rotary}].${key}`);
  for (const { item, which } of prices) {
    if (item === 'feature') note(`machines[${machine}].features.${which}`);
    if (item === 'axis-drives') note(`machines[${machine}].axisDrives.priceEach`);
    if (item === 'tailstock' && rotary !== null) note(`rotaries[${rotary}].tailstock.price`);
  }
  if (clearance.length > 0) note(`machines[${machine}].clearance.price`);
  for (const { result } of checksAt(at)) {
    const feature = featureOf(result.check);
    const isEnough = result.check === 'look-ahead' && result.verdict === 'holds';
    if (feature !== undefined && result.need !== 0 && !isEnough)
      note(`machines[${machine}].features.${feature}`, result.check);
    if (result.check === 'housing-clear' && rotary !== null)
      note(`rotaries[${rotary}].housing`, result.check);
    for (const value of [...Object.keys(result.inputs), ...result.gaps.map(({ path }) => path)]) {
      const { list } = splitValuePath(value);
      if (list === 'machines' || list === 'rotaries') note(value, result.check);
    }
  }
}

const ORDER = {
  machines: Object.keys(MACHINE_VALUE_WORDS),
  rotaries: Object.keys(ROTARY_VALUE_WORDS),
};

/** The lines of one row, in the order of the words for catalog values; what has none comes last. */
function linesOf(
  list: QuoteRow['list'],
  id: string,
  found: ReadonlyMap<string, ReadonlySet<CheckId>>,
): readonly QuoteLine[] {
  const rank = ({ value }: QuoteLine): number => {
    const place = ORDER[list].indexOf(withoutWhich(splitValuePath(value).key));
    return place < 0 ? ORDER[list].length : place;
  };
  return [...found]
    .filter(([value]) => splitValuePath(value).list === list && splitValuePath(value).name === id)
    .map(([value, checks]) => ({ value, checks: [...checks] }))
    .sort((a, b) => rank(a) - rank(b) || (a.value < b.value ? -1 : 1));
}
