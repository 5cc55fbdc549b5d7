import type { Argument, Finding } from '../decision-classes.ts';
import { atMost, type Likelihood } from '../judging/compare.ts';
import { bounded, hangingOn, type Value } from '../judging/value.ts';
import type { Rule, Speaks, Weighed } from './rule.ts';

/** Does the number lie on this side of its line, for every value of the unknowns, or for any? */
function lies(when: Speaks, number: Value, limit: Value): Likelihood {
  switch (when) {
    case 'at most':
      return { surely: atMost(number.high, limit.low), perhaps: atMost(number.low, limit.high) };
    case 'at least':
      return { surely: atMost(limit.high, number.low), perhaps: atMost(limit.low, number.high) };
    case 'above': {
      const not = lies('at most', number, limit);
      return { surely: !not.perhaps, perhaps: !not.surely };
    }
    case 'below': {
      const not = lies('at least', number, limit);
      return { surely: !not.perhaps, perhaps: !not.surely };
    }
  }
}

interface Said {
  readonly weighed: Weighed;
  readonly limit: Value;
}

/** What every rule about a subject says, in the order of the rules; one that is silent says nothing. */
export function argumentsOf<Id extends string, Subject extends string, Ground>(
  rules: readonly Rule<Id, Subject, Ground, unknown>[],
  subject: Subject,
  of: Ground,
): readonly Argument<Id>[] {
  const spoken = new Map<Id, Likelihood>();
  return rules
    .filter(({ about }) => about.includes(subject))
    .flatMap((rule) => {
      const weighed = rule.number(of);
      if (weighed === null) return [];
      const limit = rule.limit(of);
      const own = lies(rule.when, weighed.value, limit);
      const stronger = (rule.unless ?? []).flatMap((id) => spoken.get(id) ?? []);
      const surely = own.surely && stronger.every(({ perhaps }) => !perhaps);
      const perhaps = own.perhaps && stronger.every((each) => !each.surely);
      spoken.set(rule.id, { surely, perhaps });
      return perhaps ? [argument(rule, { weighed, limit }, surely)] : [];
    });
}

interface Said {
  readonly weighed: Weighed;
  readonly limit: Value;
}

const argument = <Id extends string>(
  rule: Pick<Rule<Id, string, never, unknown>, 'id' | 'side' | 'unit' | 'source'>,
  { weighed, limit }: Said,
  sure: boolean,
): Argument<Id> => ({
  rule: rule.id,
  side: rule.side,
  sure,
  number: bounded(weighed.value),
  limit: bounded(limit),
  unit: rule.unit,
  parts: weighed.parts,
  source: rule.source,
  openOn: sure ? [] : hangingOn([weighed.value, limit]).gaps.map(({ path }) => path),
});

/** What the arguments come to: what surely rules it out does; what suits has nothing weighty against it. */
export function findingOf<Id extends string>(
  rules: readonly Pick<Rule<Id, never, never, unknown>, 'id' | 'weighty'>[],
  said: readonly Argument<Id>[],
  passes: boolean,
): Finding {
  if (said.some(({ side, sure }) => side === 'rules out' && sure)) return 'ruled out';
  const weighty = new Set(rules.flatMap(({ id, weighty: isWeighty }) => (isWeighty === true ? [id] : [])));
  const spoiled = said.some(({ side, rule }) => side === 'rules out' || weighty.has(rule));
  return passes && !spoiled ? 'suits' : 'possible';
}
