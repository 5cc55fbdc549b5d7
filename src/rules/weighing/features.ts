import type { FeatureNeed, MeasureToTake } from '../decision.ts';
import { passes } from '../judging/outcome.ts';
import { bounded, known } from '../judging/value.ts';
import type { Judged } from './judged.ts';
import { FEATURE_OF } from './price.ts';

/** What has to be ordered with an arrangement: drives for its axes, and features that a family holds only with. */
export function featuresOf({ families, priced }: Judged): readonly FeatureNeed[] {
  const price = (item: string, which: string) =>
    bounded(
      priced.items.find((each) => each.item === item && (which === '' || each.which === which))?.price ??
        known(0, ''),
    );
  const drives = priced.items.some(({ item }) => item === 'axis-drives')
    ? [required('axisDrives', [], price('axis-drives', ''))]
    : [];
  const ordered = (Object.entries(FEATURE_OF) as [MeasureToTake, string][]).flatMap(([measure, feature]) => {
    const wanting = families.filter(
      ({ verdict, outcomes }) =>
        verdict !== 'fails' && outcomes.some((each) => passes(each.verdict) && each.easing === measure),
    );
    return wanting.length === 0
      ? []
      : [
          required(
            feature,
            wanting.map(({ family }) => family.name),
            price('feature', feature),
          ),
        ];
  });
  return [...drives, ...ordered];
}

const required = (
  feature: string,
  families: readonly string[],
  price: FeatureNeed['price'],
): FeatureNeed => ({
  feature,
  need: 'required',
  why: families.join(', '),
  price,
  savesHours: null,
});
