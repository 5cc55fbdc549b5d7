import type { Catalog, Machine } from '../../src/catalog/catalog.ts';
import type { Chance } from '../interviews/chance.ts';
import { replaced } from './replaced.ts';

/** What every row has to say, and text that no check reads. */
const STAYS =
  /^(?:id|name|class|kind|rotaryIncluded|nose|from|housing|spindleDrive\.taper|clearance\.\d+\.(?:kind|adds|height))(?:\.|$)/;
/** Not known as a whole, or not at all. */
const WHOLE = /^(?:(?:builtIn\.)?tilt|noseToTable|spindleToTable|builtIn\.reach\.\w+|hold\.[\w-]+\.pitches)$/;
const INSIDE_WHOLE = new RegExp(WHOLE.source.replace('$', '\\.\\d+$'));

/** The same catalog, with this share of what a row may leave out left out. */
export function withCatalogGaps(catalog: Catalog, share: number, chance: Chance): Catalog {
  if (share === 0) return catalog;
  const gapped = <Row>(row: Row): Row =>
    replaced(row, (path, value) => {
      if (STAYS.test(path) || INSIDE_WHOLE.test(path)) return value;
      const isLeaf = WHOLE.test(path) || typeof value !== 'object';
      return isLeaf && value !== null && chance.happens(share) ? 'unknown' : undefined;
    });
  return {
    ...catalog,
    rotaries: catalog.rotaries.map((row) => ({
      ...gapped(row),
      housing: chance.happens(share) ? null : row.housing,
      ...(chance.happens(share / 2) ? { hold: 'unknown' as const } : {}),
    })),
    machines: catalog.machines.map((row): Machine => {
      const after = gapped(row);
      // heights of a level spindle are refused where nothing says that it is level
      return row.spindle === 'horizontal' ? { ...after, spindle: 'horizontal' } : after;
    }),
  };
}
