import type { Catalog } from '../../catalog/catalog.ts';
import type { Candidate } from '../arranging/candidates.ts';
import { machineCase } from '../facts/machine-facts.ts';
import { builtInCase } from '../facts/rotary-facts.ts';

/** Each machine with the table that is built into it. */
export const builtInTables = ({ machines }: Pick<Catalog, 'machines'>): readonly Candidate[] =>
  machines.flatMap((row): readonly Candidate[] =>
    row.builtIn === null
      ? []
      : [
          {
            id: `${row.id}/built-in`,
            machine: machineCase(row),
            rotary: builtInCase(row, row.builtIn),
            mounting: 'built-in',
          },
        ],
  );
