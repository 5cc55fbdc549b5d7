import type { Feature } from '../../catalog/catalog.ts';
import type { MeasureToTake } from '../decision.ts';
import { fixed } from '../inputs/input.ts';
import type { Case } from '../judging/case.ts';
import type { EasingRule } from '../judging/check.ts';
import { greatest, least, type Side } from '../judging/side.ts';
import { rises, term } from '../judging/term.ts';

/** Yes and no in numbers: 1 and 0. */
export const YES: Side = greatest([], () => [
  term('needed', { it: rises(fixed('needed', 1)) }, (of) => of.it),
]);

const yesOrNo = (name: string, read: (of: Case) => boolean): Side =>
  least(['machine'], (of) => [
    term(name, { it: rises(fixed(name, read(of) ? 1 : 0)) }, (values) => values.it),
  ]);

export const isStandard = (of: Case, feature: Feature): boolean =>
  of.machine.row.features[feature] === 'standard';

/** 1 where the control has the feature as it comes, else 0. */
export const featureStandard = (feature: Feature): Side =>
  yesOrNo('standard', (of) => isStandard(of, feature));

/** 1 where the feature comes or can be ordered, whatever it costs, else 0. */
const featureOffered = (feature: Feature): Side =>
  yesOrNo('standard or offered', (of) => of.machine.row.features[feature] !== undefined);

/** The check holds once the feature is ordered. */
export const orderFeature = (
  measure: MeasureToTake,
  feature: Feature,
  also: EasingRule['all'] = [],
): EasingRule => ({
  measure,
  all: [{ need: YES, have: featureOffered(feature), sense: 'at-most' }, ...also],
});
