import { MATERIALS } from '../../mechanics/forces/materials.ts';
import type { Answers } from '../../questions/answers.ts';
import type { CautionId } from '../cautions.ts';
import { CAUTIONS } from '../cautions.ts';
import { housingSides } from '../sides/housing.ts';
import type { Judged } from './judged.ts';

/** The cautions that go with what is recommended, or with whatever may still be. */
export function cautionsFor(reading: readonly Judged[], answers: Answers): readonly CautionId[] {
  const tilts = reading.some(({ setUp }) => setUp.candidate.rotary.axes === 2);
  const added = reading.some(({ setUp }) => setUp.candidate.rotary.row !== null);
  const oversize = reading.some(({ families }) =>
    families.some(({ outcomes }) => outcomes.some(({ easing }) => easing === 'rigid-fixture')),
  );
  const burns = answers.parts.some(
    ({ material }) => material === 'unknown' || MATERIALS[material].combustible,
  );
  const turns = answers.parts.some(
    ({ motion, eccentricity }) => motion !== 'positional' || eccentricity !== 0,
  );
  const overHousing = reading.some(({ setUp: { candidate, setting } }) => {
    const { machine, mounting, rotary } = candidate;
    // on its back a rotary has its housing below the faceplate
    if (mounting === 'built-in' || machine.row.spindle === 'horizontal') return false;
    return housingSides(rotary.row?.housing ?? [], { mounting, turned: setting.place.turned }).includes(
      'door',
    );
  });
  const left = new Set<CautionId>();
  if (!tilts) left.add('tilting-table-drops');
  if (!added)
    left.add('guard-outside-the-old-guard').add('eye-bolts-at-an-angle').add('hoist-rating-includes-rigging');
  if (!oversize) left.add('rigid-oversize-fixture');
  if (!overHousing) left.add('loading-over-housing');
  if (!burns) left.add('combustible-chips');
  if (!turns) left.add('unbalanced-work');
  return CAUTIONS.filter((caution) => !left.has(caution));
}
