import type { Family } from '../../../src/rules/arranging/family.ts';
import { type Half, openGround, openWithPart } from '../../../src/rules/fast/open-ground.ts';
import { pairAt, type Tables } from '../../../src/rules/fast/tables.ts';
import { type Three, threeOf } from '../../../src/rules/fast/verdict-of.ts';
import type { Check } from '../../../src/rules/judging/check.ts';
import type { Side } from '../../../src/rules/judging/side.ts';

/**
 * What the plain judge says of a check on a machine with a stand, in all settings at once: nothing is barred but the place,
 * nothing is looked up, every kind is judged both ways round.
 */
export function plainly(
  tables: Tables,
  machine: number,
  stand: number,
  check: Check,
  family: Family | null,
): Three {
  const { machine: on, stand: under } = pairAt(tables, { machine, stand });
  const half: Half = {
    shop: tables.shop,
    stand: under,
    standKind: under.rotary,
    machine: on,
    horizontal: on.row.spindle === 'horizontal',
    turned: 'barred',
  };
  const placeless = withoutPlace(check);
  const parts = family === null ? [null] : family.cases;
  return acrossAll(
    [false, true].flatMap((turned) => {
      const ground = openGround({ ...half, turned });
      return parts.map((part) => threeOf(placeless, part === null ? ground : openWithPart(ground, part)));
    }),
  );
}

/** Over everything that a family may be: settled where all of it is so. */
function acrossAll(all: readonly Three[]): Three {
  const [first = 'passes'] = all;
  return all.every((each) => each === first) ? first : 'not settled';
}

/** The same check without its comparisons of a place. */
function withoutPlace(check: Check): Check {
  const { comparisons } = check;
  if (typeof comparisons === 'function') return check;
  const isPlaced = ({ of }: Side): boolean => of?.includes('place') === true;
  return {
    ...check,
    comparisons: comparisons.filter(
      ({ need, have, easings }) =>
        ![
          need,
          have,
          ...(easings ?? []).flatMap(({ all }) => all.flatMap((each) => [each.need, each.have])),
        ].some(isPlaced),
    ),
  };
}
